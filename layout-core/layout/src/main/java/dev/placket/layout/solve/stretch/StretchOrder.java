package dev.placket.layout.solve.stretch;

import dev.placket.layout.solve.model.Arrangement;
import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.model.Shapes;

/**
 * Stretches an arrangement: the largest common scale that keeps its relative order.
 *
 * <p>For one order the constraints on x and on y are longest paths whose lengths are made of
 * straight pieces in t. From above, Newton's step on the tightest path reaches the exact largest t
 * in a few rounds where the lengths bend upwards only; where a greatest size bends one downwards,
 * halving closes what is left. Then the order is read anew from where the flats stand, until
 * nothing more is won.
 */
public final class StretchOrder {
  private static final int ROUNDS = 6;
  private static final int STEPS = 90;
  private static final double CLOSE = 1e-13;

  private final Model model;
  private final Plan plan;
  private final Shapes shapes;
  private final boolean bendsDown;

  /** Stretching under one plan of a model. */
  public StretchOrder(Model model, Plan plan) {
    this.model = model;
    this.plan = plan;
    this.shapes = new Shapes(model, plan.anchorX(), plan.anchorY());
    boolean ties = plan.tiesX().length + plan.tiesY().length > 0;
    this.bendsDown = ties || model.scales.bendsDown();
  }

  /**
   * The arrangement at the largest t that its relative order, read anew a few times, allows.
   *
   * @param start an arrangement that keeps all rules
   * @param upper no t above this is tried
   */
  public Arrangement stretch(Arrangement start, double upper) {
    Arrangement best = start;
    for (int round = 0; round < ROUNDS; round++) {
      shapes.at(best.t());
      PairRelations r = PairRelations.of(model, plan, shapes, best);
      Chain x = Chain.onX(model, plan, shapes, r, best.x());
      Chain y = Chain.onY(model, plan, shapes, r, best.y());
      double t = largest(x, y, best.t(), upper);
      if (!settled(x, y, t)) {
        return best;
      }
      double won = t / best.t() - 1;
      best = middle(x, y, t, round);
      if (round > 1 && won < CLOSE) {
        return best;
      }
    }
    return best;
  }

  /**
   * The largest t for an order that stays as it is.
   *
   * @param order the order
   * @param guess anchors near those sought
   * @param known a t that the order allows
   * @param upper no t above this is tried
   */
  public double largest(PairRelations order, Arrangement guess, double known, double upper) {
    Chain x = Chain.onX(model, plan, shapes, order, guess.x());
    Chain y = Chain.onY(model, plan, shapes, order, guess.y());
    return largest(x, y, known, upper);
  }

  private boolean settled(Chain x, Chain y, double t) {
    shapes.at(t);
    return x.settleEarliest() && y.settleEarliest() && x.shrinkTo(t) == t && y.shrinkTo(t) == t;
  }

  /** Anchors between the earliest and the latest: another round reads another order off them. */
  private Arrangement middle(Chain x, Chain y, double t, int round) {
    x.settleLatest();
    y.settleLatest();
    double share = round % 2 == 0 ? 0.5 : round % 4 == 1 ? 0 : 1;
    double[] ax = new double[model.n];
    double[] ay = new double[model.n];
    for (int i = 0; i < model.n; i++) {
      ax[i] = x.earliest[i] + share * (x.latest[i] - x.earliest[i]);
      ay[i] = y.earliest[i] + share * (y.latest[i] - y.earliest[i]);
    }
    return new Arrangement(t, ax, ay);
  }

  private double largest(Chain x, Chain y, double known, double upper) {
    double low = known;
    double high = Math.max(known, upper);
    double t = high;
    for (int step = 0; step < STEPS; step++) {
      double next = next(x, y, t);
      if (next >= t) {
        boolean done = !bendsDown || t >= high || isTight(x, y, t, high);
        if (done) {
          return t;
        }
        low = t;
        t = (low + high) / 2;
      } else {
        high = t;
        if (next <= low && !bendsDown) {
          return low;
        }
        t = next > low ? next : (low + high) / 2;
      }
      if (high - low <= CLOSE * high) {
        return low;
      }
    }
    return low;
  }

  private boolean isTight(Chain x, Chain y, double t, double high) {
    double above = t * (1 + 1e-12);
    return above >= high || next(x, y, above) < above;
  }

  private double next(Chain x, Chain y, double t) {
    shapes.at(t);
    if (!x.settleEarliest() || !y.settleEarliest()) {
      return Double.NEGATIVE_INFINITY;
    }
    return Math.min(x.shrinkTo(t), y.shrinkTo(t));
  }
}
