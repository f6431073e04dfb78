package dev.placket.layout.solve.order;

import dev.placket.layout.solve.model.Arrangement;
import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.model.Scales;
import dev.placket.layout.solve.model.Shapes;
import dev.placket.layout.solve.stretch.PairRelations;
import dev.placket.layout.solve.stretch.StretchOrder;
import java.util.Arrays;

/**
 * The common scale that views, and after them all other flats, could reach in the relative order of
 * an arrangement.
 *
 * @param views the scale of the views over their target
 * @param others the same of the other flats; infinite where there are none
 */
record GrowthRoom(double views, double others) {
  /** Views grow to this at most. */
  private static final double VIEWS = 1.3;

  private static final double FAR = 1e3;

  /** Views within this share of one another count as equal, since the eye does not tell. */
  private static final double EQUAL = 0.02;

  /** The other flats have to gain this much before they decide. */
  private static final double WORTH = 0.1;

  /**
   * Whether this is more room: larger views, or equal views and larger other flats.
   *
   * @param by the share by which views have to be larger
   */
  boolean exceeds(GrowthRoom other, double by) {
    if (views > other.views * (1 + Math.max(by, EQUAL))) {
      return true;
    }
    return views >= other.views * (1 - EQUAL) && others > other.others * (1 + WORTH + by);
  }

  /** The room that an arrangement leaves. */
  static GrowthRoom of(Model model, Plan plan, Arrangement at) {
    model.scales.at(at.t());
    double[] value = model.scales.value.clone();
    Shapes shapes = new Shapes(model, plan.anchorX(), plan.anchorY()).at(at.t());
    PairRelations relations = PairRelations.of(model, plan, shapes, at);
    double views = raise(model, plan, relations, at, value, true);
    double others = raise(model, plan, relations, at, value, false);
    return new GrowthRoom(at.t() * views, at.t() * others);
  }

  private static double raise(
      Model model,
      Plan plan,
      PairRelations relations,
      Arrangement at,
      double[] value,
      boolean views) {
    double[] most = value.clone();
    for (int k : classes(model, views)) {
      double cap = views ? VIEWS * value[k] : FAR * value[k];
      most[k] = Math.max(value[k], Math.min(cap, model.scales.greatest[k]));
    }
    if (Arrays.equals(most, value)) {
      return views || classes(model, false).length > 0 ? 1 : Double.POSITIVE_INFINITY;
    }
    Scales scales = model.scales.following(value, value.clone(), most);
    StretchOrder stretch = new StretchOrder(model.withScales(scales, 1), plan);
    double factor = stretch.largest(relations, at, 1, FAR);
    scales.at(factor);
    System.arraycopy(scales.value, 0, value, 0, value.length);
    return factor;
  }

  /** The classes that hold a view, or those that do not. */
  private static int[] classes(Model model, boolean views) {
    boolean[] with = new boolean[model.scales.base.length];
    for (int i = 0; i < model.n; i++) {
      with[model.scales.classOf[i]] |= model.flats.get(i).role().isView();
    }
    return java.util.stream.IntStream.range(0, with.length).filter(k -> with[k] == views).toArray();
  }
}
