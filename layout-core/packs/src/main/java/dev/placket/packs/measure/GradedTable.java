package dev.placket.packs.measure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Points of measure with their values in all sizes.
 *
 * @param groups the sizes; the first group has the sample size as its base
 * @param points in the order of the list
 */
public record GradedTable(List<SizeGroup> groups, List<GradedPoint> points) {
  /** Copies the lists. */
  public GradedTable {
    groups = List.copyOf(groups);
    points = List.copyOf(points);
  }

  /** All sizes, group by group. */
  public List<String> sizes() {
    return groups.stream().flatMap(g -> g.sizes().stream()).toList();
  }

  /** The sample size; empty if there is none. */
  public String sample() {
    return groups.get(0).base();
  }

  /** A table without points. */
  public static GradedTable of(List<SizeGroup> groups) {
    return new GradedTable(groups, List.of());
  }

  /**
   * This table with one more point. O(n) for n sizes.
   *
   * @throws IllegalArgumentException if a rule names a size that is not in its group, a group has
   *     no rule or no base, or typed values are not one for each size
   */
  public GradedTable with(MeasurePoint point) {
    List<GradedPoint> all = new ArrayList<>(points);
    all.add(new GradedPoint(point, values(point)));
    return new GradedTable(groups, all);
  }

  private Map<String, BigDecimal> values(MeasurePoint point) {
    BigDecimal value = point.value();
    if (value == null) {
      if (!List.copyOf(point.typed().keySet()).equals(sizes())) {
        throw new IllegalArgumentException(
            "values for " + point.typed().keySet() + " instead of " + sizes());
      }
      return point.typed();
    }
    for (String name : point.rules().keySet()) {
      if (!name.isEmpty() && groups.stream().noneMatch(g -> g.name().equals(name))) {
        throw new IllegalArgumentException("a rule for the group '" + name + "'");
      }
    }
    Map<String, BigDecimal> values = new LinkedHashMap<>();
    for (SizeGroup group : groups) {
      GradeRule rule = point.rules().getOrDefault(group.name(), point.rules().get(""));
      if (rule == null) {
        throw new IllegalArgumentException("no rule for the group '" + group.name() + "'");
      }
      values.putAll(rule.values(group, value));
    }
    return values;
  }
}
