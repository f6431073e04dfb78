package dev.placket.layout.solve.search;

import dev.placket.layout.solve.model.Arrangement;
import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.model.Shapes;
import dev.placket.layout.solve.model.Space;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Places flats one after the other, each as near one corner of the page as it goes: the first
 * arrangements, which the search then betters.
 */
final class PlaceGreedily {
  private final Model model;
  private final Shapes shapes;
  private final Plan plan;
  private final double slack;

  /** How far the anchor of one flat may lie below that of another; NaN where that is free. */
  private final double[][] below;

  private final double[] left;
  private final double[] top;
  private final int[] placed;
  private int count;

  PlaceGreedily(Model model, Plan plan) {
    this.model = model;
    this.plan = plan;
    this.below = below(model.n, plan);
    shapes = new Shapes(model, plan.anchorX(), plan.anchorY());
    slack = model.span * 1e-12;
    left = new double[model.n];
    top = new double[model.n];
    placed = new int[model.n];
  }

  private static double[][] below(int n, Plan plan) {
    double[][] below = new double[plan.reads().length == 0 ? 0 : n][n];
    for (double[] row : below) {
      Arrays.fill(row, Double.NaN);
    }
    for (Plan.Reads r : plan.reads()) {
      below[r.first()][r.second()] = r.below();
    }
    return below;
  }

  /**
   * One attempt at scale t.
   *
   * @param order in which flats are placed
   * @param manner 0 to 7: bit 0 from the right, bit 1 from the bottom, bit 2 columns before rows
   * @return null if one finds no spot
   */
  @Nullable Arrangement place(double t, int[] order, int manner) {
    shapes.at(t);
    count = 0;
    for (int i : order) {
      if (!place(i, manner)) {
        return null;
      }
      placed[count++] = i;
    }
    double[] x = new double[model.n];
    double[] y = new double[model.n];
    for (int i = 0; i < model.n; i++) {
      x[i] = left[i] + shapes.left[i];
      y[i] = top[i] + shapes.up[i];
    }
    return new Arrangement(t, x, y);
  }

  private boolean place(int i, int manner) {
    double[] xs = spots(i, true, (manner & 1) != 0);
    double[] ys = spots(i, false, (manner & 2) != 0);
    boolean columns = (manner & 4) != 0;
    for (double p : columns ? xs : ys) {
      for (double q : columns ? ys : xs) {
        double x = columns ? p : q;
        double y = columns ? q : p;
        if (isFree(i, x, y)) {
          left[i] = x;
          top[i] = y;
          return true;
        }
      }
    }
    return false;
  }

  /** Where a footprint would touch a wall or a neighbour, the preferred spots first. */
  private double[] spots(int i, boolean onX, boolean fromFar) {
    double held = onX ? plan.heldX(model, i) : plan.heldY(model, i);
    if (!Double.isNaN(held)) {
      return new double[] {held - (onX ? shapes.left[i] : shapes.up[i])};
    }
    double[][] rooms = model.space[i].rooms();
    double size = onX ? shapes.width(i) : shapes.height(i);
    double[] spots = new double[rooms.length + count];
    int n = 0;
    for (double[] r : rooms) {
      double near = r[onX ? 0 : 1];
      double far = r[onX ? 2 : 3];
      if (far - near >= size - slack) {
        spots[n++] = fromFar ? size - far : near;
      }
    }
    for (int k = 0; k < count; k++) {
      int j = placed[k];
      double at = onX ? left[j] : top[j];
      double its = onX ? shapes.width(j) : shapes.height(j);
      double gap = model.gap[i][j];
      spots[n++] = fromFar ? size + gap - at : at + its + gap;
    }
    double[] sorted = Arrays.copyOf(spots, n);
    Arrays.sort(sorted);
    int kept = 0;
    for (int k = 0; k < n; k++) {
      if (kept == 0 || sorted[k] > sorted[kept - 1] + slack) {
        sorted[kept++] = sorted[k];
      }
    }
    sorted = Arrays.copyOf(sorted, kept);
    for (int k = 0; k < kept && fromFar; k++) {
      sorted[k] = -sorted[k];
    }
    return sorted;
  }

  private boolean isFree(int i, double x, double y) {
    Space s = model.space[i];
    double right = x + shapes.width(i);
    double bottom = y + shapes.height(i);
    if (x < s.left() - slack
        || y < s.top() - slack
        || right > s.right() + slack
        || bottom > s.bottom() + slack) {
      return false;
    }
    for (int k = 0; k < count; k++) {
      if (!isApart(i, x, y, placed[k])) {
        return false;
      }
    }
    for (double[] w : s.walls()) {
      if (x < w[2] - slack && right > w[0] + slack && y < w[3] - slack && bottom > w[1] + slack) {
        return false;
      }
    }
    return true;
  }

  private boolean isApart(int i, double x, double y, int j) {
    double gap = model.gap[i][j] - slack;
    if (below.length > 0 && !reads(i, y + shapes.up[i], j, top[j] + shapes.up[j])) {
      return false;
    }
    boolean isA = i < j;
    int options = plan.options()[isA ? Model.pair(i, j) : Model.pair(j, i)];
    return ((options & (isA ? Model.A_LEFT : Model.B_LEFT)) != 0
            && x + shapes.width(i) + gap <= left[j])
        || ((options & (isA ? Model.B_LEFT : Model.A_LEFT)) != 0
            && left[j] + shapes.width(j) + gap <= x)
        || ((options & (isA ? Model.A_ABOVE : Model.B_ABOVE)) != 0
            && y + shapes.height(i) + gap <= top[j])
        || ((options & (isA ? Model.B_ABOVE : Model.A_ABOVE)) != 0
            && top[j] + shapes.height(j) + gap <= y);
  }

  /** Whether two anchors leave the two flats in their order. */
  private boolean reads(int i, double y, int j, double its) {
    return !(y - its > below[i][j]) && !(its - y > below[j][i]);
  }
}
