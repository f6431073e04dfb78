package dev.placket.benchmarks.yardstick;

import dev.placket.benchmarks.pages.ReferencePage;
import dev.placket.benchmarks.pages.ReferencePage.Size;
import dev.placket.layout.units.Rect;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds the largest common scale at which a greedy rule succeeds.
 *
 * <p>Greedy rules may fail at a scale and succeed at a larger one, so this walks down from a bound
 * in steps of half a percent and halves only the last step.
 */
final class ScaleSearch {
  private static final double STEP = 1.005;
  private static final double PRECISION = 1e-7;

  private final ReferencePage page;
  private final Greedy rule;
  private Packing best = Packing.NONE;

  ScaleSearch(ReferencePage page, Greedy rule) {
    this.page = page;
    this.rule = rule;
  }

  /** Walks down with this order until it succeeds or is no better than the best so far. */
  void walk(int[] order) {
    double high = bound(page);
    double low = high;
    while (!succeeds(order, low)) {
      high = low;
      low /= STEP;
      if (low <= Math.max(best.scale(), bound(page) / 100)) {
        return;
      }
    }
    halve(order, low, high);
  }

  /** Tries this order a little above the best so far and rises only if it succeeds there. */
  void rise(int[] order) {
    double low = Math.max(best.scale() * (1 + PRECISION), bound(page) / 100);
    if (succeeds(order, low)) {
      halve(order, low, bound(page));
    }
  }

  Packing best() {
    return best;
  }

  /** No arrangement is larger: from the area and from the widest and highest flat. */
  static double bound(ReferencePage page) {
    Rect in = page.inside();
    double area = 0;
    double bound = Double.POSITIVE_INFINITY;
    for (Size s : page.flats()) {
      area += s.width() * s.height();
      bound = Math.min(bound, Math.min(in.width() / s.width(), in.height() / s.height()));
    }
    return Math.min(bound, Math.sqrt(in.width() * in.height() / area));
  }

  private void halve(int[] order, double from, double to) {
    double low = from;
    double high = to;
    while (high - low > PRECISION * low) {
      double middle = (low + high) / 2;
      if (succeeds(order, middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
  }

  private boolean succeeds(int[] order, double scale) {
    List<Rect> placed = rule.place(Room.of(page, scale), order);
    if (placed == null) {
      return false;
    }
    if (scale > best.scale()) {
      best = new Packing(scale, onSheet(placed, order));
    }
    return true;
  }

  private List<Rect> onSheet(List<Rect> placed, int[] order) {
    @Nullable Rect[] boxes = new Rect[order.length];
    for (int i = 0; i < order.length; i++) {
      boxes[order[i]] = Room.onSheet(page, placed.get(i));
    }
    return Arrays.stream(boxes).map(java.util.Objects::requireNonNull).toList();
  }
}
