package dev.placket.benchmarks.yardstick;

import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The same area as some boxes that may overlap, as boxes that do not: upright strips between all
 * edges. A solver that forbids overlaps forbids those of walls among themselves, too.
 */
final class Disjoint {
  private Disjoint() {}

  static List<Rect> of(List<Rect> boxes) {
    double[] xs =
        boxes.stream()
            .flatMapToDouble(b -> java.util.stream.DoubleStream.of(b.left(), b.right()))
            .sorted()
            .distinct()
            .toArray();
    List<Rect> sorted = new ArrayList<>(boxes);
    sorted.sort(Comparator.comparingDouble(Rect::top));
    List<Rect> apart = new ArrayList<>();
    for (int k = 0; k + 1 < xs.length; k++) {
      addStrip(sorted, xs[k], xs[k + 1], apart);
    }
    return apart;
  }

  private static void addStrip(List<Rect> sorted, double left, double right, List<Rect> apart) {
    double top = Double.NaN;
    double bottom = Double.NEGATIVE_INFINITY;
    for (Rect b : sorted) {
      if (b.left() > left || b.right() < right) {
        continue;
      }
      if (b.top() > bottom) {
        if (!Double.isNaN(top)) {
          apart.add(new Rect(left, top, right, bottom));
        }
        top = b.top();
      }
      bottom = Math.max(bottom, b.bottom());
    }
    if (!Double.isNaN(top)) {
      apart.add(new Rect(left, top, right, bottom));
    }
  }
}
