package dev.placket.layout.solve.finish;

import dev.placket.layout.fit.Placement;
import dev.placket.layout.solve.model.Arrangement;
import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.model.Scales;
import dev.placket.layout.solve.model.Shapes;
import dev.placket.layout.solve.stretch.Chain;
import dev.placket.layout.solve.stretch.PairRelations;
import dev.placket.layout.solve.stretch.StretchOrder;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Growth: from a finished arrangement all classes that are not blocked are raised together until
 * each is blocked or at its cap, in the relative order found.
 *
 * <p>For one order the sizes that fit make a convex set that holds all smaller sizes, apart from
 * the rules that let the front lead, which are linear too. So filling it round by round gives the
 * lexicographic max-min exactly: raise all classes by one factor as far as it goes, keep those that
 * no longer can rise, go on with the rest.
 */
public final class GrowOn {
  /** Views grow to this at most. */
  static final double VIEWS = 1.3;

  /**
   * A class counts as blocked if it cannot rise by this share; the later where rounding hides it.
   */
  private static final double[] RISES = {1e-9, 1e-8, 1e-7, 1e-6, 1e-5};

  private final Model model;
  private final Plan plan;
  private final int classes;
  private final double[] start;
  private final double[] cap;
  private final PairRelations relations;
  private final FinishExactly.Finished done;
  private final Arrangement from;
  private final double[] value;
  private final boolean[] kept;
  private boolean exact = true;

  /**
   * Reads order and sizes off a finished arrangement.
   *
   * @param model as searched
   * @param plan what the arrangement keeps
   * @param done at its rounded common scale
   * @param cap the largest common scale of each class
   */
  public GrowOn(Model model, Plan plan, FinishExactly.Finished done, double[] cap) {
    this.model = model;
    this.plan = plan;
    this.done = done;
    this.from = done.spread();
    this.classes = model.scales.base.length;
    this.start = new double[classes];
    for (int k = 0; k < classes; k++) {
      start[k] = done.commons()[k].doubleValue();
    }
    this.cap = cap.clone();
    for (int k = 0; k < classes; k++) {
      this.cap[k] = Math.max(cap[k], start[k]);
    }
    this.value = start.clone();
    this.kept = new boolean[classes];
    Shapes shapes = shapes(scales(start, start));
    this.relations = PairRelations.of(model, plan, shapes.at(1), from);
  }

  /**
   * The largest common scale of each class: its own maximum, and for views 1.3 times the start.
   *
   * @param commons where the classes start
   */
  public static double[] caps(Model model, BigDecimal[] commons) {
    double[] cap = model.scales.greatest.clone();
    for (int i = 0; i < model.n; i++) {
      int k = model.scales.classOf[i];
      if (model.flats.get(i).role().isView()) {
        cap[k] = Math.min(cap[k], VIEWS * commons[k].doubleValue());
      }
    }
    for (int k = 0; k < cap.length; k++) {
      cap[k] = Math.max(cap[k], commons[k].doubleValue());
    }
    return cap;
  }

  /** Whether what {@link #run} found is the largest growth for the order. */
  public boolean exact() {
    return exact;
  }

  /** The relative order that growth keeps. */
  PairRelations relations() {
    return relations;
  }

  /** The placements once all is grown; as they were where no rounding of the growth holds. */
  public List<Placement> placements() {
    Model grown = run();
    Shapes shapes = new Shapes(grown, plan.anchorX(), plan.anchorY()).at(1);
    Chain x = Chain.onX(grown, plan, shapes, relations, from.x());
    Chain y = Chain.onY(grown, plan, shapes, relations, from.y());
    if (x.settleEarliest() && y.settleEarliest()) {
      Arrangement at = new Arrangement(1, x.earliest.clone(), y.earliest.clone());
      FinishExactly.Finished finished = new FinishExactly(grown, plan).finish(at);
      if (finished != null) {
        return cappedAsBefore(finished.placements());
      }
    }
    exact = false;
    return done.placements();
  }

  /** Capped is who is held under the target, however much grew elsewhere. */
  private List<Placement> cappedAsBefore(List<Placement> grown) {
    List<Placement> all = new ArrayList<>();
    for (int i = 0; i < grown.size(); i++) {
      Placement p = grown.get(i);
      boolean capped = done.placements().get(i).capped();
      all.add(new Placement(p.flat(), p.scale(), p.left(), p.top(), capped));
    }
    return all;
  }

  /** The sizes grown: a model that is grown at t = 1 and never goes under the start. */
  private Model run() {
    for (int k = 0; k < classes; k++) {
      kept[k] = start[k] >= cap[k];
    }
    for (int round = 0; round < classes && active(); round++) {
      raise();
      keepBlocked();
    }
    exact &= !active();
    return model.withScales(model.scales.following(value, start, value), 0);
  }

  private boolean active() {
    for (boolean k : kept) {
      if (!k) {
        return true;
      }
    }
    return false;
  }

  /** All classes not kept rise by one factor, from where they stand now. */
  private void raise() {
    double[] most = value.clone();
    double upper = 1;
    for (int k = 0; k < classes; k++) {
      if (!kept[k]) {
        most[k] = cap[k];
        upper = Math.max(upper, Math.min(cap[k], start[k] * 1e6) / value[k]);
      }
    }
    Scales scales = scales(value, most);
    StretchOrder stretch = new StretchOrder(model.withScales(scales, 1), plan);
    double g = stretch.largest(relations, from, 1, upper);
    scales.at(g);
    for (int k = 0; k < classes; k++) {
      value[k] = kept[k] ? value[k] : Math.max(value[k], scales.value[k]);
    }
  }

  private void keepBlocked() {
    for (double rise : RISES) {
      boolean any = false;
      for (int k = 0; k < classes; k++) {
        if (!kept[k] && !canRise(k, rise)) {
          kept[k] = true;
          any = true;
        }
      }
      if (any) {
        return;
      }
    }
    exact = false;
    Arrays.fill(kept, true);
  }

  /** Whether a class, with those that hold it under them, can rise while no other shrinks. */
  private boolean canRise(int k, double rise) {
    if (value[k] >= cap[k] * (1 - 1e-12)) {
      return false;
    }
    double[] more = value.clone();
    boolean[] up = new boolean[classes];
    up[k] = true;
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int c = 0; c < classes; c++) {
        more[c] = up[c] ? value[c] * (1 + rise) : value[c];
      }
      for (Scales.Cap c : model.scales.caps) {
        boolean over = more[c.of()] > c.factor() * more[c.under()] - c.less();
        if (over && up[c.of()] && !up[c.under()]) {
          if (kept[c.under()] || value[c.under()] >= cap[c.under()] * (1 - 1e-12)) {
            return false;
          }
          up[c.under()] = true;
          changed = true;
        }
      }
    }
    return fits(more);
  }

  private boolean fits(double[] sizes) {
    Shapes shapes = shapes(scales(sizes, sizes)).at(1);
    Chain x = Chain.onX(model, plan, shapes, relations, from.x());
    Chain y = Chain.onY(model, plan, shapes, relations, from.y());
    return x.settleEarliest() && y.settleEarliest() && x.shrinkTo(1) == 1 && y.shrinkTo(1) == 1;
  }

  private Shapes shapes(Scales scales) {
    return new Shapes(model.withScales(scales, 1), plan.anchorX(), plan.anchorY());
  }

  /** Classes that stand at {@code least} where t is 1 and grow with t up to {@code most}. */
  private Scales scales(double[] least, double[] most) {
    return model.scales.following(least, least, most);
  }
}
