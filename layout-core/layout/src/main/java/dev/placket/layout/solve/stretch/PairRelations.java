package dev.placket.layout.solve.stretch;

import dev.placket.layout.solve.model.Arrangement;
import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.model.Shapes;
import dev.placket.layout.solve.model.Space;

/**
 * One full relative order: how each pair stands apart, and between which walls each flat stands.
 *
 * @param sides one option for each pair, by {@link Model#pair}
 * @param fromX what each footprint's left edge keeps right of
 * @param toX what each footprint's right edge keeps left of
 * @param fromY what each footprint's top edge keeps under
 * @param toY what each footprint's bottom edge keeps above
 */
public record PairRelations(
    byte[] sides, double[] fromX, double[] toX, double[] fromY, double[] toY) {
  /**
   * Reads the order off an arrangement: of the options that hold, the one with most room to spare.
   *
   * @param shapes the footprints at the arrangement's scale
   */
  public static PairRelations of(Model model, Plan plan, Shapes shapes, Arrangement a) {
    int n = model.n;
    byte[] sides = new byte[Model.pairs(n)];
    for (int j = 1; j < n; j++) {
      for (int i = 0; i < j; i++) {
        sides[Model.pair(i, j)] = side(model, plan, shapes, a, i, j);
      }
    }
    PairRelations r =
        new PairRelations(sides, new double[n], new double[n], new double[n], new double[n]);
    for (int i = 0; i < n; i++) {
      r.wallIn(model.space[i], shapes, a, i);
    }
    return r;
  }

  /** The same order with walls of its own to change. */
  public PairRelations copy() {
    return new PairRelations(sides, fromX.clone(), toX.clone(), fromY.clone(), toY.clone());
  }

  private static byte side(Model model, Plan plan, Shapes s, Arrangement a, int i, int j) {
    int options = plan.options()[Model.pair(i, j)];
    double dx = a.x()[j] - a.x()[i];
    double dy = a.y()[j] - a.y()[i];
    double[] spare = {
      dx - s.right[i] - s.left[j],
      -dx - s.right[j] - s.left[i],
      dy - s.down[i] - s.up[j],
      -dy - s.down[j] - s.up[i]
    };
    int best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int o = 0; o < 4; o++) {
      if ((options & 1 << o) != 0 && spare[o] > most) {
        most = spare[o];
        best = 1 << o;
      }
    }
    return (byte) best;
  }

  private void wallIn(Space space, Shapes s, Arrangement a, int i) {
    fromX[i] = space.left();
    toX[i] = space.right();
    fromY[i] = space.top();
    toY[i] = space.bottom();
    double left = a.x()[i] - s.left[i];
    double right = a.x()[i] + s.right[i];
    double top = a.y()[i] - s.up[i];
    double bottom = a.y()[i] + s.down[i];
    for (double[] w : space.walls()) {
      double[] spare = {left - w[2], w[0] - right, top - w[3], w[1] - bottom};
      int best = 0;
      for (int o = 1; o < 4; o++) {
        best = spare[o] > spare[best] ? o : best;
      }
      switch (best) {
        case 0 -> fromX[i] = Math.max(fromX[i], w[2]);
        case 1 -> toX[i] = Math.min(toX[i], w[0]);
        case 2 -> fromY[i] = Math.max(fromY[i], w[3]);
        default -> toY[i] = Math.min(toY[i], w[1]);
      }
    }
  }
}
