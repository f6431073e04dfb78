package dev.placket.layout.solve.look;

import dev.placket.layout.units.Rect;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Measures of {@link Look} that count: lines on which boxes stand, spaces, sizes. What differs by
 * less than half a point counts as the same.
 */
final class LookLines {
  private static final double SAME = 0.5;

  private final List<Rect> boxes;

  LookLines(List<Rect> boxes) {
    this.boxes = boxes;
  }

  /** Upright lines: by left edges, middles or right edges, whichever are fewest. */
  int upright() {
    int left = different(Rect::left);
    int middle = different(b -> (b.left() + b.right()) / 2);
    return Math.min(left, Math.min(middle, different(Rect::right)));
  }

  /** Level lines: by upper edges, middles or lower edges, whichever are fewest. */
  int level() {
    int top = different(Rect::top);
    int middle = different(b -> (b.top() + b.bottom()) / 2);
    return Math.min(top, Math.min(middle, different(Rect::bottom)));
  }

  /** How many sizes there are. */
  int sizes() {
    int sizes = 0;
    for (int i = 0; i < boxes.size(); i++) {
      Rect b = boxes.get(i);
      sizes += boxes.subList(0, i).stream().noneMatch(o -> sameSize(o, b)) ? 1 : 0;
    }
    return sizes;
  }

  private static boolean sameSize(Rect a, Rect b) {
    return Math.abs(a.width() - b.width()) < SAME && Math.abs(a.height() - b.height()) < SAME;
  }

  double regularity() {
    int n = boxes.size();
    if (n == 1) {
      return 1;
    }
    double lines = 1 - (upright() + level()) / (2.0 * n);
    double[] spaces = spaces();
    int different = Math.min(2 * (n - 1), Math.max(1, different(spaces)));
    return (lines + 1 - (different - 1) / (2.0 * (n - 1))) / 2;
  }

  /** From each box to its next on the right and below. */
  private double[] spaces() {
    double[] spaces = new double[2 * boxes.size()];
    int count = 0;
    for (Rect b : boxes) {
      double right = Double.POSITIVE_INFINITY;
      double below = Double.POSITIVE_INFINITY;
      for (Rect o : boxes) {
        boolean beside = o.top() < b.bottom() && o.bottom() > b.top() && o.left() >= b.right();
        boolean under = o.left() < b.right() && o.right() > b.left() && o.top() >= b.bottom();
        right = beside ? Math.min(right, o.left() - b.right()) : right;
        below = under ? Math.min(below, o.top() - b.bottom()) : below;
      }
      if (right < Double.POSITIVE_INFINITY) {
        spaces[count++] = right;
      }
      if (below < Double.POSITIVE_INFINITY) {
        spaces[count++] = below;
      }
    }
    return Arrays.copyOf(spaces, count);
  }

  private int different(ToDoubleFunction<Rect> edge) {
    return different(boxes.stream().mapToDouble(edge).toArray());
  }

  private static int different(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int count = 0;
    double last = Double.NEGATIVE_INFINITY;
    for (double v : sorted) {
      if (v > last + SAME) {
        count++;
        last = v;
      }
    }
    return count;
  }
}
