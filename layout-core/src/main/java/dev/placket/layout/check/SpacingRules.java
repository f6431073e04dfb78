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
        BigDecimal lacking = lacking(p, Rect.of(cell.box()), clearance);
        if (lacking.signum() > 0) {
          breaches.add("clearance", near(p, lacking, "cell " + cell.name()));
        }
      }
      for (Rule rule : request.sheet().rules()) {
        BigDecimal lacking = lacking(p, ink(rule), clearance);
        if (lacking.signum() > 0) {
          breaches.add("clearance", near(p, lacking, "the rule at " + rule.axis()));
        }
      }
    }
    for (int i = 0; i < placed.size(); i++) {
      for (int j = 0; j < i; j++) {
        Placed a = placed.get(j);
        Placed b = placed.get(i);
        BigDecimal gap = Exact.of(spacing.gap(a.role(), b.role()));
        BigDecimal lacking = lacking(b, a.footprint(), gap);
        if (lacking.signum() > 0) {
          breaches.add("gap", near(b, lacking, a.id()));
        }
      }
    }
  }

  private static Rect ink(Rule rule) {
    return Rect.of(rule.axis()).grown(Exact.half(Exact.of(rule.width())));
  }

  /** What it stands too near; zero or less where it keeps its distance. */
  private static BigDecimal lacking(Placed p, Rect other, BigDecimal wanted) {
    return wanted.subtract(p.footprint().separation(other));
  }

  private static String near(Placed p, BigDecimal lacking, String from) {
    return p.id() + " stands " + Exact.pt(lacking) + " too near " + from;
  }
}
