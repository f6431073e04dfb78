package dev.placket.packs.description;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The points of measure of a style, as they are written.
 *
 * @param unit of the figures: cm, mm or in
 * @param shown the units in which values are printed; empty for that of the figures
 * @param round the step to which values are rounded in a unit, by its sign
 * @param sizes the sizes by the name of their group; under the empty name where there is one group
 * @param sample the sample size, then the size of each further group that stands for it
 * @param checkDrawings whether drawn lengths are compared with the sample size
 * @param points by their codes; none where a CSV file has them
 * @param csv a file of comma-separated values beside the description, or null
 * @param workbook a workbook beside the description that has the points in a range, or null
 * @param range a defined name of it, or a worksheet and its cells; empty without a workbook
 */
public record PackMeasurements(
    String unit,
    List<String> shown,
    Map<String, String> round,
    Map<String, List<String>> sizes,
    List<String> sample,
    boolean checkDrawings,
    Map<String, Point> points,
    @Nullable String csv,
    @Nullable String workbook,
    String range) {
  /**
   * A point of measure.
   *
   * @param name what is measured
   * @param how how it is measured
   * @param measured any of half, full, flat and stretched, with blanks between
   * @param tolerance as in 0.5 or +1 -0.5; empty for none
   * @param value at the sample size; empty where values are typed
   * @param grade the steps of each group of sizes by its name; under the empty name for all others
   * @param values typed, one for each size; none where they are graded
   */
  public record Point(
      Words name,
      Words how,
      String measured,
      String tolerance,
      String value,
      Map<String, String> grade,
      List<String> values) {
    /** Copies the collections. */
    public Point {
      grade = Pack.ordered(grade);
      values = List.copyOf(values);
    }
  }

  /** Copies the collections. */
  public PackMeasurements {
    shown = List.copyOf(shown);
    round = Pack.ordered(round);
    Map<String, List<String>> groups = new LinkedHashMap<>();
    sizes.forEach((name, its) -> groups.put(name, List.copyOf(its)));
    sizes = Collections.unmodifiableMap(groups);
    sample = List.copyOf(sample);
    points = Pack.ordered(points);
  }
}
