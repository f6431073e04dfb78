package dev.placket.packs.description;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Reads the points of measure of a description. */
final class MeasurementsNode {
  private static final List<String> LIST =
      List.of(
          "unit",
          "shown",
          "round",
          "sizes",
          "sample",
          "check-drawings",
          "points",
          "csv",
          "workbook",
          "range");
  private static final List<String> POINT =
      List.of("name", "how", "measured", "tolerance", "value", "grade", "values");

  /** Where groups have rules, the key of all groups without their own. */
  static final String OTHERS = "all";

  private final NodeValues values;

  MeasurementsNode(NodeValues values) {
    this.values = values;
  }

  @Nullable PackMeasurements list(@Nullable PackNode node) {
    if (node == null) {
      return null;
    }
    Entries e = new Entries(node, "the measurements", LIST, values.faults());
    PackNode points = e.get("points");
    PackNode csv = e.get("csv");
    PackNode workbook = e.get("workbook");
    PackNode range = workbook == null ? e.get("range") : e.need("range");
    long lists = Stream.of(points, csv, workbook).filter(Objects::nonNull).count();
    if (lists != 1 || workbook == null && range != null) {
      String found =
          lists == 0 ? "without points, csv or workbook" : "with several lists of points";
      values
          .faults()
          .add(
              node.mark(),
              "measurements " + (lists == 1 ? "with a range, but no workbook" : found),
              lists == 1 ? "the workbook" : "one of points, csv, workbook");
    }
    return new PackMeasurements(
        values.text(e.need("unit"), ""),
        values.oneOrMore(e.get("shown"), "units"),
        texts(e.get("round"), "a step, as in 0.5"),
        sizes(e.need("sizes")),
        values.oneOrMore(e.get("sample"), "sizes"),
        values.flag(e.get("check-drawings"), false),
        values.named(points, "name and value, or name and values", this::point),
        csv == null ? null : values.text(csv, ""),
        workbook == null ? null : values.text(workbook, ""),
        values.text(range, ""));
  }

  private Map<String, List<String>> sizes(@Nullable PackNode node) {
    if (node instanceof PackNode.Keys) {
      return values.named(node, "a list of sizes", (name, its) -> values.oneOrMore(its, "sizes"));
    }
    return Map.of("", values.oneOrMore(node, "sizes"));
  }

  private Map<String, String> texts(@Nullable PackNode node, String what) {
    return values.named(node, what, (name, its) -> values.text(its, ""));
  }

  private PackMeasurements.Point point(String code, PackNode node) {
    Entries e = new Entries(node, "point " + code, POINT, values.faults());
    PackNode grade = e.get("grade");
    Map<String, String> rules = new LinkedHashMap<>();
    if (grade instanceof PackNode.Keys) {
      texts(grade, "steps, as in 2.5, XL 3")
          .forEach((group, rule) -> rules.put(group.equals(OTHERS) ? "" : group, rule));
    } else if (grade != null) {
      rules.put("", values.text(grade, ""));
    }
    return new PackMeasurements.Point(
        values.words(e.need("name"), Words.NONE),
        values.words(e.get("how"), Words.NONE),
        values.text(e.get("measured"), ""),
        values.text(e.get("tolerance"), ""),
        values.text(e.get("value"), ""),
        rules,
        values.oneOrMore(e.get("values"), "values, one for each size"));
  }
}
