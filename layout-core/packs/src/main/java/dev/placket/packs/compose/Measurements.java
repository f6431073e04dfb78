package dev.placket.packs.compose;

import dev.placket.packs.compose.MeasuredLines.Line;
import dev.placket.packs.description.CellTable;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackMeasurements;
import dev.placket.packs.description.TextPosition;
import dev.placket.packs.language.Phrases;
import dev.placket.packs.measure.GradeRule;
import dev.placket.packs.measure.GradedTable;
import dev.placket.packs.measure.MeasurePoint;
import dev.placket.packs.measure.MeasureText;
import dev.placket.packs.measure.MeasureUnit;
import dev.placket.packs.measure.Rounding;
import dev.placket.packs.measure.SizeGroup;
import dev.placket.packs.table.Csv;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Makes the graded table of a description; slips are noted. */
final class Measurements {
  private static final List<String> MEASURED = List.of("half", "full", "flat", "stretched");

  private final Described described;
  private final PackMeasurements list;
  private final MeasureUnit unit;

  private Measurements(Described described, PackMeasurements list, MeasureUnit unit) {
    this.described = described;
    this.list = list;
    this.unit = unit;
  }

  /** The table; null where there is none, or it cannot be made. */
  static @Nullable MeasuredList of(Described described, TableFile files, Phrases phrases) {
    PackMeasurements list = described.pack().measurements();
    if (list == null) {
      return null;
    }
    MeasureUnit unit = unit(described, list.unit(), "measurements/unit");
    return unit == null ? null : new Measurements(described, list, unit).made(files, phrases);
  }

  private static @Nullable MeasureUnit unit(Described described, String sign, String path) {
    MeasureUnit unit = MeasureUnit.of(sign).orElse(null);
    if (unit == null) {
      TextPosition at = described.places().of(path);
      described.faults().unknown(at, "the unit", sign, MeasureUnit.signs());
    }
    return unit;
  }

  private @Nullable MeasuredList made(TableFile files, Phrases phrases) {
    List<SizeGroup> groups = groups();
    List<Rounding> shown = shown();
    if (groups.isEmpty() || shown.isEmpty()) {
      return null;
    }
    GradedTable table = GradedTable.of(groups);
    MeasuredLines lines = new MeasuredLines(described, list, table.sizes());
    List<Line> all = lines.described();
    String csv = list.csv();
    if (csv != null) {
      TextPosition at = described.places().of("measurements/csv");
      all =
          files
              .records(csv, "measurements/csv")
              .map(r -> lines.of(r, csv + ", line ", at))
              .orElse(List.of());
    }
    String workbook = list.workbook();
    if (workbook != null) {
      TextPosition at = described.places().of("measurements/range");
      all =
          files
              .range(workbook, list.range(), "measurements/workbook")
              .map(t -> lines.of(records(t), where(workbook, t), at))
              .orElse(List.of());
    }
    Map<String, Line> byCode = new LinkedHashMap<>();
    for (Line line : all) {
      MeasurePoint point = point(line, table);
      Line before = byCode.putIfAbsent(line.code(), line);
      if (before != null) {
        add(line, "the code '" + line.code() + "' again", "one point for a code");
      } else if (point != null) {
        try {
          table = table.with(point);
        } catch (IllegalArgumentException e) {
          add(line, String.valueOf(e.getMessage()), "a rule for the sizes and groups of the list");
        }
      }
    }
    return new MeasuredList(unit, shown, table, byCode, phrases);
  }

  private static List<Csv.Row> records(CellTable table) {
    return table.rows().stream().map(r -> new Csv.Row(r.number(), r.values())).toList();
  }

  private static String where(String workbook, CellTable table) {
    return workbook + ", worksheet " + table.worksheet() + ", row ";
  }

  private List<SizeGroup> groups() {
    List<SizeGroup> groups = new ArrayList<>();
    List<String> seen = new ArrayList<>();
    TextPosition at = described.places().of("measurements/sizes");
    list.sizes()
        .forEach(
            (name, sizes) -> {
              int number = groups.size();
              String base = number < list.sample().size() ? list.sample().get(number) : "";
              boolean once = sizes.stream().noneMatch(seen::contains);
              seen.addAll(sizes);
              if (sizes.isEmpty() || !once || sizes.stream().distinct().count() < sizes.size()) {
                described.faults().add(at, "sizes " + sizes, "one or more, each once");
              } else if (!base.isEmpty() && !sizes.contains(base)) {
                TextPosition there = described.places().of("measurements/sample");
                described.faults().unknown(there, "the size", base, sizes);
              } else {
                groups.add(new SizeGroup(name, sizes, base));
              }
            });
    return groups.size() == list.sizes().size() ? groups : List.of();
  }

  private List<Rounding> shown() {
    List<Rounding> shown = new ArrayList<>();
    for (String sign : list.round().keySet()) {
      unit(described, sign, "measurements/round/" + sign);
    }
    for (String sign : list.shown().isEmpty() ? List.of(list.unit()) : list.shown()) {
      MeasureUnit each = unit(described, sign, "measurements/shown");
      String step = list.round().get(sign);
      if (each == null) {
        return List.of();
      }
      try {
        shown.add(
            step == null ? unitRounding(each) : new Rounding(each, Rounding.step(step, each)));
      } catch (IllegalArgumentException e) {
        TextPosition at = described.places().of("measurements/round/" + sign);
        described
            .faults()
            .add(
                at, String.valueOf(e.getMessage()), "a step, as in 0.5, and 1/8 or 1/16 in inches");
        return List.of();
      }
    }
    return shown;
  }

  /** As typed in the unit of the list; as is usual in others. */
  private Rounding unitRounding(MeasureUnit each) {
    return each == unit ? Rounding.fine(each) : Rounding.usual(each);
  }

  private @Nullable MeasurePoint point(Line line, GradedTable table) {
    PackMeasurements.Point said = line.said();
    if (table.sizes().contains(line.code()) || line.code().isBlank()) {
      add(line, "the code '" + line.code() + "'", "a letter or code that is no size");
      return null;
    }
    for (String word : said.measured().isBlank() ? new String[0] : said.measured().split(" +")) {
      if (!MEASURED.contains(word)) {
        add(line, "measured '" + word + "'", "any of " + String.join(", ", MEASURED));
      }
    }
    boolean typed = !said.values().isEmpty();
    if (typed == !said.value().isBlank() || typed != said.grade().isEmpty()) {
      add(line, "the point '" + line.code() + "'", "value and grade, or a value for each size");
      return null;
    }
    try {
      ToleranceText tolerance = ToleranceText.parse(said.tolerance(), unit);
      return new MeasurePoint(
          line.code(),
          tolerance.plus(),
          tolerance.minus(),
          typed ? null : MeasureText.parse(said.value(), unit),
          rules(said.grade(), table.sizes()),
          typed ? values(said.values(), table.sizes()) : Map.of());
    } catch (IllegalArgumentException e) {
      add(line, String.valueOf(e.getMessage()), MeasuredList.lengthForm(unit));
      return null;
    }
  }

  private Map<String, GradeRule> rules(Map<String, String> grade, List<String> sizes) {
    Map<String, GradeRule> rules = new LinkedHashMap<>();
    grade.forEach((group, text) -> rules.put(group, GradeText.parse(text, unit, sizes)));
    return rules;
  }

  private Map<String, BigDecimal> values(List<String> typed, List<String> sizes) {
    if (typed.size() != sizes.size()) {
      throw new IllegalArgumentException(typed.size() + " values for " + sizes.size() + " sizes");
    }
    Map<String, BigDecimal> values = new LinkedHashMap<>();
    for (int i = 0; i < sizes.size(); i++) {
      values.put(sizes.get(i), MeasureText.parse(typed.get(i), unit));
    }
    return values;
  }

  private void add(Line line, String found, String expected) {
    described.faults().add(line.at(), line.before() + found, expected);
  }
}
