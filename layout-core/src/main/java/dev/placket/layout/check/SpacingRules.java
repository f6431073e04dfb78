package dev.placket.layout.check;

import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Rule;
import java.math.BigDecimal;
import java.util.List;

/**
 * Footprints keep their clearance from labelled cells and from the ink of rules, and their gap from
 * one another, each on x or on y.
 */
final class SpacingRules {
  private SpacingRules() {}

  static void check(FitRequest request, List<Placed> placed, Breaches breaches) {
    Spacing spacing = request.spacing();
    for (Placed p : placed) {
      BigDecimal clearance = Exact.of(spacing.clearance(p.role()));
      for (LabelledCell cell : request.sheet().labelledCells()) {
        apart("clearance", p, "cell " + cell.name(), Rect.of(cell.box()), clearance, breaches);
      }
      for (Rule rule : request.sheet().rules()) {
        apart("clearance", p, "the rule at " + rule.axis(), ink(rule), clearance, breaches);
      }
    }
    for (int i = 0; i < placed.size(); i++) {
      for (int j = 0; j < i; j++) {
        Placed a = placed.get(j);
        Placed b = placed.get(i);
        BigDecimal gap = Exact.of(spacing.gap(a.role(), b.role()));
        apart("gap", b, a.id(), a.footprint(), gap, breaches);
      }
    }
  }

  private static Rect ink(Rule rule) {
    return Rect.of(rule.axis()).grown(Exact.half(Exact.of(rule.width())));
  }

  private static void apart(
      String rule, Placed p, String from, Rect other, BigDecimal wanted, Breaches breaches) {
    BigDecimal lacking = wanted.subtract(p.footprint().separation(other));
    if (lacking.signum() > 0) {
      breaches.add(rule, p.id() + " stands " + Exact.pt(lacking) + " too near " + from);
    }
  }
}
