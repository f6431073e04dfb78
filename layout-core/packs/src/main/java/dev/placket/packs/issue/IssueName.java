package dev.placket.packs.issue;

import dev.placket.packs.description.Described;
import dev.placket.packs.output.OutputName;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What names an issue.
 *
 * @param style the style number
 * @param revision its revision
 * @param date as in 2027-02-11
 */
public record IssueName(String style, String revision, String date) {
  /**
   * As a description states it.
   *
   * @param fields the values of its header
   * @throws Refusal naming each field that is missing, and a date that is none
   */
  static IssueName of(Described described, Map<String, String> fields) throws Refusal {
    List<Fault> faults = new ArrayList<>();
    for (String field : List.of("style-number", "revision", "date")) {
      if (fields.getOrDefault(field, "").isBlank()) {
        faults.add(
            Fault.content(described.file(), "has no field '" + field + "', which names an issue")
                .remedy("state it under fields"));
      }
    }
    String date = fields.getOrDefault("date", "").strip();
    if (faults.isEmpty() && !isDate(date)) {
      faults.add(
          Fault.content(described.file(), "has the date '" + date + "'")
              .remedy("write it as year, month and day, as in 2027-02-11"));
    }
    if (!faults.isEmpty()) {
      throw Refusal.input(faults);
    }
    return new IssueName(
        fields.getOrDefault("style-number", "").strip(),
        fields.getOrDefault("revision", "").strip(),
        date);
  }

  private static boolean isDate(String date) {
    try {
      return LocalDate.parse(date).toString().equals(date);
    } catch (DateTimeException e) {
      return false;
    }
  }

  /** The name of its folder, with which the names of all its files begin. */
  public String stem() {
    return OutputName.stem(style + "_" + revision + "_" + date, "issue");
  }
}
