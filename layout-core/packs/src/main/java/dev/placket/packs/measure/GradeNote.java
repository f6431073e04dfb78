package dev.placket.packs.measure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something in a graded table that is likely a slip.
 *
 * @param kind what it is
 * @param code the point's
 * @param size the first size without which the rest would do, or the last; empty for a whole point
 */
public record GradeNote(Kind kind, String code, String size) {
  /** What is likely a slip. */
  public enum Kind {
    /** Values go up and down; without this one, or none, they go one way. */
    OUT_OF_RUN,
    /** A tolerance is wider than the smallest step between two sizes, so that sizes mix. */
    TOLERANCE_OVER_STEP
  }

  /** The notes on a table, in the order of its points. */
  public static List<GradeNote> of(GradedTable table) {
    List<GradeNote> notes = new ArrayList<>();
    for (GradedPoint point : table.points()) {
      BigDecimal least = null;
      for (SizeGroup group : table.groups()) {
        List<BigDecimal> steps = steps(point, group);
        if (point.typed()) {
          outOfRun(point, group, steps, notes);
        }
        for (BigDecimal step : steps) {
          if (step.signum() != 0 && (least == null || step.abs().compareTo(least) < 0)) {
            least = step.abs();
          }
        }
      }
      if (least != null
          && (over(point.point().plus(), least) || over(point.point().minus(), least))) {
        notes.add(new GradeNote(Kind.TOLERANCE_OVER_STEP, point.point().code(), ""));
      }
    }
    return notes;
  }

  private static boolean over(@Nullable BigDecimal tolerance, BigDecimal step) {
    return tolerance != null && tolerance.compareTo(step) > 0;
  }

  private static List<BigDecimal> steps(GradedPoint point, SizeGroup group) {
    List<BigDecimal> steps = new ArrayList<>();
    for (int i = 1; i < group.sizes().size(); i++) {
      BigDecimal value = point.values().get(group.sizes().get(i));
      BigDecimal before = point.values().get(group.sizes().get(i - 1));
      if (value == null || before == null) {
        throw new IllegalStateException("no value of " + point.point().code());
      }
      steps.add(value.subtract(before));
    }
    return steps;
  }

  private static void outOfRun(
      GradedPoint point, SizeGroup group, List<BigDecimal> steps, List<GradeNote> notes) {
    if (goesOneWay(steps)) {
      return;
    }
    List<String> sizes = group.sizes();
    String first = sizes.get(sizes.size() - 1);
    for (int i = sizes.size() - 1; i >= 0; i--) {
      List<BigDecimal> without = new ArrayList<>(steps);
      BigDecimal before = i > 0 ? without.remove(i - 1) : BigDecimal.ZERO;
      if (i > 0 && i < steps.size()) {
        without.set(i - 1, without.get(i - 1).add(before));
      } else if (i == 0) {
        without.remove(0);
      }
      if (goesOneWay(without)) {
        first = sizes.get(i);
      }
    }
    notes.add(new GradeNote(Kind.OUT_OF_RUN, point.point().code(), first));
  }

  private static boolean goesOneWay(List<BigDecimal> steps) {
    return steps.stream().noneMatch(s -> s.signum() > 0)
        || steps.stream().noneMatch(s -> s.signum() < 0);
  }
}
