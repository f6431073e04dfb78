package dev.placket.packs.compose;

import dev.placket.packs.description.CheckPart;
import dev.placket.packs.description.PackSheet;
import dev.placket.packs.measure.Rounding;
import dev.placket.packs.sample.JudgedPoint;
import dev.placket.packs.sample.JudgedSample;
import dev.placket.packs.sample.SampleCheck;
import dev.placket.packs.sample.Verdict;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What a report says of samples: their totals, and what of them is on no sheet or not in the list.
 *
 * @param list the points of measure
 * @param rows of the files
 * @param sheets all sheets
 */
record SampleNotes(MeasuredList list, List<SampleRow> rows, Collection<PackSheet> sheets) {
  List<String> of(Collection<SampleCheck> checks) {
    List<String> notes = new ArrayList<>();
    for (SampleCheck check : checks) {
      check.sizes().forEach(size -> notes.add(totals(size)));
      check.sizes().forEach(size -> revised(size, notes));
      unseen(check, notes);
    }
    return notes;
  }

  private String totals(JudgedSample size) {
    String name = "sample " + size.sample() + ", size " + size.size() + ": ";
    long points = size.points().size();
    long measured = points - size.count(Verdict.NOT_MEASURED);
    if (measured == 0) {
      return name + "not measured.";
    }
    Rounding rounding = list.shown().get(0);
    String out =
        size.points().stream()
            .filter(p -> p.verdict().isOut())
            .map(p -> p.value().code() + " " + p.differenceText(rounding))
            .collect(Collectors.joining(", "));
    String unit = " " + rounding.unit().sign();
    long none = size.count(Verdict.NO_TOLERANCE);
    return name
        + measured
        + " of "
        + points
        + " points measured, "
        + size.out()
        + " out of tolerance"
        + (out.isEmpty() ? "" : " (" + out + unit + ")")
        + (none == 0 ? "" : ", " + none + " differ and have no tolerance")
        + ".";
  }

  /** Revised values that the list does not have. */
  private void revised(JudgedSample size, List<String> notes) {
    for (JudgedPoint point : size.points()) {
      BigDecimal revised = point.value().revised();
      BigDecimal now = inList(point.value().code(), size.size());
      if (revised != null && revised.compareTo(now) != 0 && isLast(size, point.value().code())) {
        notes.add(
            "point %s: %s revised %s to %s; the list still asks %s."
                .formatted(
                    point.value().code(), size.sample(), size.size(), text(revised), text(now)));
      }
    }
  }

  /** Whether no later row revises the point in this size. */
  private boolean isLast(JudgedSample size, String code) {
    return rows.stream()
        .filter(r -> r.of("point").equals(code) && !r.of("revised").isEmpty())
        .filter(r -> r.of("size").isEmpty() || r.of("size").equals(size.size()))
        .reduce((a, b) -> b)
        .filter(r -> r.of("sample").equals(size.sample()))
        .isPresent();
  }

  private BigDecimal inList(String code, String size) {
    return list.table().points().stream()
        .filter(p -> p.point().code().equals(code))
        .map(p -> p.values().get(size))
        .findFirst()
        .orElseThrow();
  }

  private String text(BigDecimal mm) {
    Rounding fine = Rounding.fine(list.unit());
    return fine.text(fine.nearest(mm)) + " " + list.unit().sign();
  }

  private void unseen(SampleCheck check, List<String> notes) {
    List<PackSheet> its = sheets.stream().filter(s -> check.name().equals(s.check())).toList();
    boolean comments =
        its.stream()
            .flatMap(s -> s.tables().values().stream())
            .anyMatch(t -> t.check() == CheckPart.COMMENTS);
    if (!its.isEmpty() && !comments && !check.comments().isEmpty()) {
      notes.add(
          "sample "
              + check.name()
              + ": its comments are on no sheet; a table with 'check: comments' lists them.");
    }
    boolean photographs = its.stream().anyMatch(s -> !s.photographs().isEmpty());
    boolean any =
        rows.stream()
            .anyMatch(r -> r.of("sample").equals(check.name()) && !r.of("photograph").isEmpty());
    if (!its.isEmpty() && any && !photographs) {
      notes.add(
          "sample "
              + check.name()
              + ": its photographs are on no sheet; a sheet's key 'photographs' names their window.");
    }
  }
}
