package dev.placket.layout.fit;

import org.jspecify.annotations.Nullable;

/**
 * Spreads what freedom a relative order leaves at a scale: the least space grows as far as it goes,
 * then the next, and what is still free stands in the middle.
 */
final class SpreadOut {
  private static final int ROUNDS = 8;
  private static final int HALVINGS = 36;

  private final Model model;
  private final Plan plan;
  private final Shapes shapes;
  private final Relations relations;
  private final Arrangement start;

  /**
   * Reads the order off an arrangement.
   *
   * @param start it keeps all rules
   */
  SpreadOut(Model model, Plan plan, Arrangement start) {
    this.model = model;
    this.plan = plan;
    this.start = start;
    shapes = new Shapes(model, plan.anchorX(), plan.anchorY()).at(start.t());
    relations = Relations.of(model, plan, shapes, start);
  }

  /** The anchors spread at scale t, or null if the order does not go so far. */
  @Nullable Arrangement at(double t) {
    shapes.at(t);
    Relations own = relations.copy();
    double[] x = spread(Chain.onX(model, plan, shapes, own, start.x()), t);
    double[] y = spread(Chain.onY(model, plan, shapes, own, start.y()), t);
    if (x != null && y != null && Balance.wanted(model)) {
      Balance.move(model, Chain.onX(model, plan, shapes, relations, start.x()), x, plan, true);
      Balance.move(model, Chain.onY(model, plan, shapes, relations, start.y()), y, plan, false);
    }
    return x == null || y == null ? null : new Arrangement(t, x, y);
  }

  private double @Nullable [] spread(Chain chain, double t) {
    if (!fits(chain, t)) {
      return null;
    }
    Spaces spaces = new Spaces(chain);
    for (int round = 0; round < ROUNDS && spaces.anyFree(); round++) {
      double low = 0;
      double high = model.span;
      for (int k = 0; k < HALVINGS; k++) {
        double mid = (low + high) / 2;
        spaces.widen(mid);
        if (fits(chain, t)) {
          low = mid;
        } else {
          high = mid;
        }
      }
      spaces.widen(low);
      fits(chain, t);
      chain.settleLatest();
      if (!spaces.freeze(model.span * 1e-9)) {
        break;
      }
    }
    fits(chain, t);
    chain.settleLatest();
    double[] at = new double[model.n];
    for (int i = 0; i < model.n; i++) {
      at[i] = (chain.earliest[i] + Math.max(chain.earliest[i], chain.latest[i])) / 2;
    }
    return at;
  }

  private static boolean fits(Chain chain, double t) {
    return chain.settleEarliest() && chain.shrinkTo(t) == t;
  }

  /** The spaces of one axis that can grow: between neighbours, and to the walls. */
  private static final class Spaces {
    private final Chain chain;
    private final double[] gaps;
    private final double[] from;
    private final double[] to;
    private final boolean[] frozen;

    Spaces(Chain chain) {
      this.chain = chain;
      gaps = chain.gaps().clone();
      from = chain.walls(false).clone();
      to = chain.walls(true).clone();
      frozen = new boolean[gaps.length + 2 * from.length];
    }

    boolean anyFree() {
      for (boolean f : frozen) {
        if (!f) {
          return true;
        }
      }
      return false;
    }

    void widen(double by) {
      int arcs = gaps.length;
      int n = from.length;
      for (int k = 0; k < arcs; k++) {
        if (!frozen[k]) {
          chain.gaps()[k] = gaps[k] + by;
        }
      }
      for (int i = 0; i < n; i++) {
        if (!frozen[arcs + i]) {
          chain.walls(false)[i] = from[i] + by;
        }
        if (!frozen[arcs + n + i]) {
          chain.walls(true)[i] = to[i] - by;
        }
      }
    }

    /** Keeps the spaces that cannot grow any more; false if that is none. */
    boolean freeze(double slack) {
      boolean any = false;
      int arcs = gaps.length;
      int n = from.length;
      for (int k = 0; k < arcs; k++) {
        any |= freeze(k, chain.spare(k) < slack);
      }
      for (int i = 0; i < n; i++) {
        any |= freeze(arcs + i, chain.spareNear(i) < slack);
        any |= freeze(arcs + n + i, chain.spareFar(i) < slack);
      }
      return any;
    }

    private boolean freeze(int k, boolean tight) {
      boolean newly = tight && !frozen[k];
      frozen[k] |= tight;
      return newly;
    }
  }
}
