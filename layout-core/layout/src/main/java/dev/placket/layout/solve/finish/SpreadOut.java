package dev.placket.layout.solve.finish;

import dev.placket.layout.solve.model.Arrangement;
import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.model.Shapes;
import dev.placket.layout.solve.stretch.Chain;
import dev.placket.layout.solve.stretch.PairRelations;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Spreads what freedom a relative order leaves at a scale: the least space grows as far as it goes,
 * then the next, and what is still free stands in the middle.
 */
public final class SpreadOut {
  private static final int ROUNDS = 8;
  private static final int STEPS = 40;

  private final Model model;
  private final Plan plan;
  private final Shapes shapes;
  private final PairRelations relations;
  private final Arrangement start;

  /**
   * Reads the order off an arrangement.
   *
   * @param start it keeps all rules
   */
  public SpreadOut(Model model, Plan plan, Arrangement start) {
    this.model = model;
    this.plan = plan;
    this.start = start;
    shapes = new Shapes(model, plan.anchorX(), plan.anchorY()).at(start.t());
    relations = PairRelations.of(model, plan, shapes, start);
  }

  /** The anchors spread at scale t, or null if the order does not go so far. */
  public @Nullable Arrangement at(double t) {
    shapes.at(t);
    shapes.keepSizes();
    PairRelations own = relations.copy();
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
      widest(chain, spaces);
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

  /**
   * Widens all free spaces as far as they go, by Newton's step on the tightest path: its length is
   * straight in what the spaces gain, and the longest of such paths bends upwards only.
   */
  private void widest(Chain chain, Spaces spaces) {
    double by = model.span;
    for (int k = 0; k < STEPS; k++) {
      spaces.widen(by);
      double next = chain.settleEarliest() ? chain.shrinkTo(by) : 0;
      if (next >= by) {
        return;
      }
      by = Math.max(0, next);
    }
    spaces.widen(0);
    chain.settleEarliest();
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
      Arrays.fill(chain.gapSlopes(), 1);
      Arrays.fill(chain.wallSlopes(false), 1);
      Arrays.fill(chain.wallSlopes(true), 1);
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
      if (newly) {
        stand(k);
      }
      return newly;
    }

    private void stand(int k) {
      int arcs = gaps.length;
      int n = from.length;
      if (k < arcs) {
        chain.gapSlopes()[k] = 0;
      } else {
        chain.wallSlopes(k >= arcs + n)[(k - arcs) % n] = 0;
      }
    }
  }
}
