package dev.placket.packs.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Changes to single values in the text of a CSV file; all else stays as it was written. */
public final class CsvText {
  private static final String MARK = "\uFEFF";

  private final String mark;
  private final String text;
  private final List<Csv.Row> rows;
  private final List<List<Csv.Place>> places;
  private final List<Edit> edits = new ArrayList<>();

  private record Edit(Csv.Place place, String by) {}

  /**
   * A text without changes.
   *
   * @param whole the file, with its byte order mark if it has one
   * @throws Csv.CsvException if it is not comma-separated values
   */
  public CsvText(String whole) throws Csv.CsvException {
    this.mark = whole.startsWith(MARK) ? MARK : "";
    this.text = whole.substring(mark.length());
    this.rows = Csv.read(text);
    this.places = Csv.places(text);
  }

  /**
   * Puts a value in the place of one.
   *
   * @param line the line that its record begins on
   * @param heading of its column, in the first record
   * @return whether there is such a record and column
   */
  public boolean set(int line, String heading, String value) {
    int column = rows.get(0).fields().stream().map(String::strip).toList().indexOf(heading);
    for (int r = 1; r < rows.size() && column >= 0; r++) {
      if (rows.get(r).line() == line) {
        edits.add(new Edit(places.get(r).get(column), quoted(value)));
        return true;
      }
    }
    return false;
  }

  /** The line of the first record with a value in a column; 0 if there is none. */
  public int line(String heading, String value) {
    int column = rows.get(0).fields().stream().map(String::strip).toList().indexOf(heading);
    return rows.stream()
        .skip(1)
        .filter(r -> column >= 0 && r.fields().get(column).strip().equals(value))
        .mapToInt(Csv.Row::line)
        .findFirst()
        .orElse(0);
  }

  private static String quoted(String value) {
    boolean plain = value.chars().noneMatch(c -> ",\"\r\n".indexOf(c) >= 0);
    return plain ? value : '"' + value.replace("\"", "\"\"") + '"';
  }

  /** The file with the changes. */
  public String changed() {
    StringBuilder changed = new StringBuilder(text);
    edits.stream()
        .sorted(Comparator.comparingInt((Edit e) -> e.place.from()).reversed())
        .forEach(e -> changed.replace(e.place.from(), e.place.to(), e.by));
    return mark + changed;
  }
}
