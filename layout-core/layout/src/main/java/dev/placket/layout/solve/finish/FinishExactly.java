package dev.placket.layout.solve.finish;

import static dev.placket.layout.solve.finish.Footprint.exact;

import dev.placket.layout.fit.Placement;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.solve.model.Arrangement;
import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.model.Scales;
import dev.placket.layout.solve.model.Shapes;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Rounds an arrangement so that every hard rule holds in decimals without any tolerance: scales to
 * twelve digits, positions to 1e-9 pt.
 *
 * <p>Rounding moves an edge by half of 1e-9 pt at most, so the common scale gives way by a hair
 * until the spread arrangement has that much to spare everywhere.
 */
public final class FinishExactly {
  private static final MathContext NEAREST =
      new MathContext(RoundScales.DIGITS, RoundingMode.HALF_EVEN);
  private static final int DECIMALS = 9;

  /**
   * A scale so near to one of twelve digits is that one: what the search lost are double's digits.
   */
  private static final double MEANT = 1e-14;

  /**
   * By how much the scale may give way, one try after the other. The least is some ten units of the
   * grid on a common sheet, so that growth finds room for its own rounding.
   */
  private static final double[] HAIRS = {
    2e-11, 5e-11, 1e-10, 5e-10, 1e-9, 1.5e-9, 2e-9, 3e-9, 4e-9, 6e-9, 8e-9, 1.2e-8, 1.6e-8, 2.4e-8,
    3.2e-8, 5e-8, 8e-8, 1.6e-7, 3.2e-7, 1e-6, 1e-5, 0
  };

  private final Model model;
  private final Plan plan;
  private final CheckExactly check;

  private final RoundScales scales;

  /** Rounding for the arrangements of one plan. */
  public FinishExactly(Model model, Plan plan) {
    this.model = model;
    this.plan = plan;
    this.check = new CheckExactly(model, plan);
    this.scales = new RoundScales(model);
  }

  /**
   * The placements, in the order of the flats.
   *
   * @param scale the common scale they have
   * @param placements one for each flat
   * @param commons the common scale of each class
   * @param spread where the anchors stand
   */
  public record Finished(
      BigDecimal scale, List<Placement> placements, BigDecimal[] commons, Arrangement spread) {}

  /** The arrangement in decimals; null if no rounding near it keeps all rules. */
  public @Nullable Finished finish(Arrangement a) {
    SpreadOut spread = new SpreadOut(model, plan, a);
    BigDecimal nearest = exact(a.t()).round(NEAREST);
    boolean meant = Math.abs(nearest.doubleValue() - a.t()) <= MEANT * a.t();
    Finished done = meant && a.t() < model.end ? tryAt(nearest, spread) : null;
    for (int k = 0; k < HAIRS.length && done == null; k++) {
      double t = a.t() * (1 - HAIRS[k]);
      done = t >= model.low ? tryAt(exact(t).round(RoundScales.DOWN), spread) : null;
    }
    return done != null ? done : tryAt(exact(a.t()).round(RoundScales.UP), spread);
  }

  private @Nullable Finished tryAt(BigDecimal scale, SpreadOut spread) {
    double t = scale.doubleValue();
    BigDecimal[] commons = scales.at(scale);
    Arrangement a = commons == null ? null : spread.at(t);
    if (commons == null || a == null) {
      return null;
    }
    Footprint[] boxes = new Footprint[model.n];
    Shapes shapes = new Shapes(model, plan.anchorX(), plan.anchorY()).at(t);
    for (int i = 0; i < model.n; i++) {
      boxes[i] = box(i, commons, a, shapes);
    }
    if (!check.holds(boxes)) {
      return null;
    }
    List<Placement> placements = new ArrayList<>();
    for (int i = 0; i < model.n; i++) {
      Footprint b = boxes[i];
      String id = model.flats.get(i).id();
      placements.add(new Placement(id, b.scale(), b.inkLeft(), b.inkTop(), isCapped(i, t)));
    }
    return new Finished(scale, placements, commons, a);
  }

  private Footprint box(int i, BigDecimal[] commons, Arrangement a, Shapes shapes) {
    Flat f = model.flats.get(i);
    BigDecimal scale = commons[model.scales.classOf[i]].multiply(RoundScales.ratio(f));
    double s = scale.doubleValue();
    double inkLeft = a.x()[i] - plan.anchorX()[i] * s * f.ink().width();
    double inkTop = a.y()[i] - plan.anchorY()[i] * s * f.ink().height();
    return Footprint.of(f, scale, rounded(inkLeft), rounded(inkTop));
  }

  private static BigDecimal rounded(double at) {
    return exact(at).setScale(DECIMALS, RoundingMode.HALF_EVEN);
  }

  /** Whether the greatest size of its class holds it under its target. */
  private boolean isCapped(int i, double t) {
    Scales s = model.scales;
    int k = s.classOf[i];
    return s.base[k] * t > s.greatest[k] * (1 + 1e-11);
  }
}
