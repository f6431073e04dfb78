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
    clearances(request, placed, breaches);
    Spacing spacing = request.spacing();
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

  private static void clearances(FitRequest request, List<Placed> placed, Breaches breaches) {
    List<LabelledCell> cells = request.sheet().labelledCells();
    List<ExactRect> covered = cells.stream().map(c -> ExactRect.of(c.box())).toList();
    List<Rule> rules = request.sheet().rules();
    List<ExactRect> ruled = rules.stream().map(SpacingRules::ink).toList();
    for (Placed p : placed) {
      BigDecimal clearance = Exact.of(request.spacing().clearance(p.role()));
      for (int i = 0; i < cells.size(); i++) {
        BigDecimal lacking = lacking(p, covered.get(i), clearance);
        if (lacking.signum() > 0) {
          breaches.add("clearance", near(p, lacking, "cell " + cells.get(i).name()));
        }
      }
      for (int i = 0; i < rules.size(); i++) {
        BigDecimal lacking = lacking(p, ruled.get(i), clearance);
        if (lacking.signum() > 0) {
          breaches.add("clearance", near(p, lacking, "the rule at " + rules.get(i).axis()));
        }
      }
    }
  }

  private static ExactRect ink(Rule rule) {
    return ExactRect.of(rule.axis()).grown(Exact.half(Exact.of(rule.width())));
  }

  /** What it stands too near; zero or less where it keeps its distance. */
  private static BigDecimal lacking(Placed p, ExactRect other, BigDecimal wanted) {
    return wanted.subtract(p.footprint().separation(other));
  }

  private static String near(Placed p, BigDecimal lacking, String from) {
    return p.id() + " stands " + Exact.pt(lacking) + " too near " + from;
  }
}
