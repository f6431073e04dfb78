package dev.placket.packs.compose;

import dev.placket.layout.sheet.GridTrack;
import dev.placket.layout.units.Length;
import dev.placket.packs.compose.MeasuredLines.Line;
import dev.placket.packs.description.PackColumn;
import dev.placket.packs.description.PackMeasurements;
import dev.placket.packs.description.PackTable;
import dev.placket.packs.description.Words;
import dev.placket.packs.language.Phrases;
import dev.placket.packs.language.StockPhrase;
import dev.placket.packs.measure.GradeNote;
import dev.placket.packs.measure.GradedPoint;
import dev.placket.packs.measure.GradedTable;
import dev.placket.packs.measure.MeasureList;
import dev.placket.packs.measure.MeasureUnit;
import dev.placket.packs.measure.Rounding;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The points of measure of a pack, graded.
 *
 * @param unit of the description's figures
 * @param shown how values are printed, one or more
 * @param table the values
 * @param lines what is written of each point, by its code
 * @param phrases the languages that are printed
 */
record MeasuredList(
    MeasureUnit unit,
    List<Rounding> shown,
    GradedTable table,
    Map<String, Line> lines,
    Phrases phrases) {
  static final Length CODE = Length.mm(11);

  /** What is likely a slip, in words. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    if (table.sample().isEmpty()) {
      notes.add("measurements: no sample size is stated.");
    }
    for (GradedPoint point : table.points()) {
      if (point.values().values().stream().anyMatch(this::altered)) {
        notes.add(
            "point %s: values are printed to the nearest %s."
                .formatted(point.point().code(), step()));
      }
    }
    for (GradeNote note : GradeNote.of(table)) {
      notes.add(
          switch (note.kind()) {
            case OUT_OF_RUN ->
                "point "
                    + note.code()
                    + ": sizes go up and down; check the value of "
                    + note.size()
                    + ".";
            case TOLERANCE_OVER_STEP ->
                "point " + note.code() + ": the tolerance is larger than a step between two sizes.";
          });
    }
    return notes;
  }

  /** How messages describe a length in a unit. */
  static String lengthForm(MeasureUnit unit) {
    String example = unit == MeasureUnit.INCH ? "23 7/16" : "59.5";
    return "a length, as in " + example + ", in " + unit.sign();
  }

  /** Whether a value in the unit of the list is printed as another. */
  private boolean altered(BigDecimal mm) {
    return shown.stream()
        .filter(r -> r.unit() == unit)
        .anyMatch(r -> r.nearest(mm).compareTo(r.exact(mm)) != 0);
  }

  /** To what values are rounded in the unit of the list. */
  private String step() {
    Rounding own = shown.stream().filter(r -> r.unit() == unit).findFirst().orElseThrow();
    return own.text(own.step()) + " " + unit.sign();
  }

  /** As other programs take it, each name in the first language. */
  MeasureList list(PackText text) {
    Map<String, String> names = new LinkedHashMap<>();
    lines.forEach((code, line) -> names.put(code, text.beside(line.said().name(), "measurements")));
    return new MeasureList(unit, shown, table, names);
  }

  /** Those of these codes that the list lacks. */
  List<String> unknown(List<String> codes) {
    return codes.stream().filter(c -> !isAll(c) && !lines.containsKey(c)).toList();
  }

  private static boolean isAll(String code) {
    return code.equals("all");
  }

  /** The printed table of these points. */
  PackTable filled(PackTable said) {
    List<GradedPoint> points = new ArrayList<>();
    for (GradedPoint point : table.points()) {
      String code = point.point().code();
      if (said.measures().contains(code)
          || said.measures().stream().anyMatch(MeasuredList::isAll)) {
        points.add(point);
      }
    }
    boolean even = points.stream().allMatch(MeasuredList::hasEvenTolerance);
    List<PackColumn> columns = new ArrayList<>();
    columns.add(column(heading(StockPhrase.POINT, ""), new GridTrack.Fixed(CODE), null));
    String units = shown.size() == 1 ? " (" + shown.get(0).unit().sign() + ")" : "";
    columns.add(
        column(
            heading(StockPhrase.MEASURED, units), new GridTrack.Share(1), PackColumn.Align.LEFT));
    for (String size : table.sizes()) {
      for (Rounding each : shown) {
        String in = shown.size() == 1 ? size : size + "\n" + each.unit().sign();
        columns.add(column(Words.of(in), null, align(each)));
      }
    }
    for (Rounding each : shown) {
      String in = shown.size() == 1 ? "" : "\n" + each.unit().sign();
      columns.add(
          column(
              even ? Words.of("\u00b1" + in) : heading(StockPhrase.TOLERANCE, in),
              null,
              even ? align(each) : PackColumn.Align.LEFT));
    }
    List<List<Words>> rows = new ArrayList<>();
    for (GradedPoint point : points) {
      rows.add(row(point, even));
    }
    return said.sampled(table.sample()).with(columns, rows);
  }

  static PackColumn.Align align(Rounding rounding) {
    return rounding.unit() == MeasureUnit.INCH ? PackColumn.Align.RIGHT : PackColumn.Align.DECIMAL;
  }

  static PackColumn column(
      Words heading, @Nullable GridTrack width, PackColumn.@Nullable Align align) {
    return new PackColumn(heading, width, align, false, false);
  }

  private static boolean hasEvenTolerance(GradedPoint point) {
    BigDecimal plus = point.point().plus();
    BigDecimal minus = point.point().minus();
    return plus == null || minus == null || plus.compareTo(minus) == 0;
  }

  private List<Words> row(GradedPoint point, boolean even) {
    Line line = Objects.requireNonNull(lines.get(point.point().code()));
    List<Words> row = new ArrayList<>();
    row.add(Words.of(line.code()));
    row.add(measured(line.said()));
    for (BigDecimal value : point.values().values()) {
      for (Rounding each : shown) {
        row.add(Words.of(each.text(each.nearest(value))));
      }
    }
    for (Rounding each : shown) {
      row.add(Words.of(tolerance(point.point().plus(), point.point().minus(), each, even)));
    }
    return row;
  }

  /** A tolerance as it is printed: one number where all of its table are even. */
  static String tolerance(
      @Nullable BigDecimal plus, @Nullable BigDecimal minus, Rounding rounding, boolean even) {
    if (plus == null || minus == null) {
      return "";
    }
    String up = rounding.text(rounding.tolerance(plus));
    if (even) {
      return up;
    }
    String down = rounding.text(rounding.tolerance(minus));
    return plus.compareTo(minus) == 0 ? "\u00b1" + up : "+" + up + " \u2212" + down;
  }

  /** Name, how it is measured, and the words for half and stretched. */
  Words measured(PackMeasurements.Point said) {
    Map<String, String> texts = new LinkedHashMap<>();
    for (String language : phrases.languages()) {
      String name = in(said.name(), language);
      if (name == null) {
        // What lacks a language is noted where the table is set.
        continue;
      }
      List<String> parts = new ArrayList<>(List.of(name));
      parts.add(Objects.requireNonNullElse(in(said.how(), language), ""));
      for (String word : said.measured().strip().split(" +")) {
        StockPhrase phrase = StockPhrase.measured(word);
        parts.add(phrase == null ? word : phrases.in(phrase, language).text());
      }
      parts.removeIf(String::isBlank);
      texts.put(language, String.join(", ", parts));
    }
    return new Words(texts);
  }

  private @Nullable String in(Words words, String language) {
    String own = words.byLanguage().get(language);
    return own != null || !words.plain()
        ? own
        : phrases.in(words.byLanguage().getOrDefault("", ""), language).text();
  }

  Words heading(StockPhrase phrase, String more) {
    return new Headings(phrases).of(phrase, more);
  }
}
