package dev.placket.layout.check;

import dev.placket.layout.flat.Limits;
import java.math.BigDecimal;
import java.util.List;

/** The longest side of the ink is not under its least nor above its greatest size. */
final class SizeRules {
  private SizeRules() {}

  static void check(List<Placed> placed, Breaches breaches) {
    for (Placed p : placed) {
      Limits limits = p.flat().limits();
      BigDecimal size = p.ink().longestSide();
      BigDecimal under = Exact.of(limits.least()).subtract(size);
      if (under.signum() > 0) {
        breaches.add("least size", p.id() + " is " + Exact.pt(under) + " under its least size");
      }
      if (limits.greatest() != null) {
        BigDecimal over = size.subtract(Exact.of(limits.greatest()));
        if (over.signum() > 0) {
          breaches.add(
              "greatest size", p.id() + " is " + Exact.pt(over) + " above its greatest size");
        }
      }
    }
  }
}
