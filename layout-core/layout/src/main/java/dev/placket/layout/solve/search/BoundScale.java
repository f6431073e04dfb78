package dev.placket.layout.solve.search;

import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.model.Shapes;
import dev.placket.layout.solve.model.Space;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoublePredicate;

/**
 * The first bounds on the common scale: every flat fits into one of its maximal empty rectangles,
 * and the footprints together have no more area than there is, of the whole sheet and of each
 * window that some share.
 *
 * <p>For areas each footprint is grown to the right and down by the least gap there is, and so is
 * all free room: what has to stay apart by that gap then merely must not overlap.
 */
final class BoundScale {
  private static final double CLOSE = 1e-9;

  private final Model model;
  private final Shapes shapes;

  private BoundScale(Model model) {
    this.model = model;
    Plan plan = Plan.free(model);
    this.shapes = new Shapes(model, plan.anchorX(), plan.anchorY());
  }

  /** A t above which nothing fits; not above the end, 0 where nothing fits at all. */
  static double of(Model model) {
    return new BoundScale(model).bound();
  }

  private double bound() {
    double bound = Math.min(model.end, 1);
    while (bound < model.end && holdsAll(bound)) {
      bound = Math.min(model.end, 2 * bound);
    }
    bound = least(bound, this::holdsAll);
    double gap = leastGap();
    Space[] all = Arrays.stream(model.space).distinct().toArray(Space[]::new);
    bound = byArea(bound, gap, all);
    for (Space one : all.length > 1 ? all : new Space[0]) {
      bound = byArea(bound, gap, one);
    }
    return bound;
  }

  /** The flats that may use these spaces alone have no more area than those have. */
  private double byArea(double bound, double gap, Space... spaces) {
    List<Space> among = List.of(spaces);
    double area = area(gap, among);
    return least(bound, t -> footprints(t, gap, among) <= area * (1 + CLOSE));
  }

  /** The largest t up to a limit that passes, or a hair above it; 0 where none does. */
  private static double least(double limit, DoublePredicate passes) {
    if (passes.test(limit)) {
      return limit;
    }
    if (!passes.test(0)) {
      return 0;
    }
    double low = 0;
    double high = limit;
    while (high - low > CLOSE * high / 4 && high > 1e-12) {
      double mid = (low + high) / 2;
      if (passes.test(mid)) {
        low = mid;
      } else {
        high = mid;
      }
    }
    return high;
  }

  private boolean holdsAll(double t) {
    shapes.at(t);
    for (int i = 0; i < model.n; i++) {
      if (!model.space[i].holds(shapes.width(i), shapes.height(i), model.span * 1e-12)) {
        return false;
      }
    }
    return true;
  }

  private double leastGap() {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < model.n; i++) {
      for (int j = 0; j < i; j++) {
        least = Math.min(least, model.gap[i][j]);
      }
    }
    return model.n > 1 ? least : 0;
  }

  private double footprints(double t, double gap, List<Space> among) {
    shapes.at(t);
    double sum = 0;
    for (int i = 0; i < model.n; i++) {
      if (among.contains(model.space[i])) {
        sum += (shapes.width(i) + gap) * (shapes.height(i) + gap);
      }
    }
    return sum;
  }

  /** The area of all rooms of these spaces, grown by the gap. */
  private static double area(double gap, List<Space> among) {
    List<double[]> all = new ArrayList<>();
    for (Space space : among) {
      for (double[] r : space.rooms()) {
        all.add(new double[] {r[0], r[1], r[2] + gap, r[3] + gap});
      }
    }
    return area(all);
  }

  /** The area of a union of rectangles, slab by slab. O(m²) for m rectangles, sorting aside. */
  private static double area(List<double[]> boxes) {
    double[] ys =
        boxes.stream()
            .flatMapToDouble(b -> java.util.stream.DoubleStream.of(b[1], b[3]))
            .sorted()
            .distinct()
            .toArray();
    boxes.sort((a, b) -> Double.compare(a[0], b[0]));
    double sum = 0;
    for (int k = 0; k + 1 < ys.length; k++) {
      double end = Double.NEGATIVE_INFINITY;
      double covered = 0;
      for (double[] b : boxes) {
        if (b[1] <= ys[k] && b[3] >= ys[k + 1] && b[2] > end) {
          covered += b[2] - Math.max(end, b[0]);
          end = b[2];
        }
      }
      sum += covered * (ys[k + 1] - ys[k]);
    }
    return sum;
  }
}
