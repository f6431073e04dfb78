package dev.placket.layout.check;

import dev.placket.layout.flat.Limits;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/**
 * The longest side of the ink is not under its least nor above its greatest size.
 *
 * <p>Where the two leave one size only, twelve digits of scale need not hit it: it may then be
 * under its least size by what one unit in the twelfth digit of the scale makes of it.
 */
final class SizeRules {
  private SizeRules() {}

  static void check(List<Placed> placed, Breaches breaches) {
    for (Placed p : placed) {
      Limits limits = p.flat().limits();
      BigDecimal size = p.ink().longestSide();
      BigDecimal under = Exact.of(limits.least()).subtract(size);
      if (under.compareTo(oneSize(p) ? unit(p) : BigDecimal.ZERO) > 0) {
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

  private static boolean oneSize(Placed p) {
    Limits limits = p.flat().limits();
    return limits.greatest() != null
        && Exact.of(limits.greatest()).subtract(Exact.of(limits.least())).compareTo(unit(p)) < 0;
  }

  /** What one unit in the twelfth digit of its set's common scale makes of the longest side. */
  private static BigDecimal unit(Placed p) {
    BigDecimal ratio = Placed.ratio(p.flat());
    BigDecimal common = p.scale().divide(ratio, MathContext.DECIMAL64);
    return Exact.unitInTwelfth(common).multiply(ratio).multiply(Placed.longestSide(p.flat()));
  }
}
