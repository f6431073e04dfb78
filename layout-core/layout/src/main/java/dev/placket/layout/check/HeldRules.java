package dev.placket.layout.check;

import dev.placket.layout.flat.Held;
import java.math.BigDecimal;
import java.util.List;

/** What is held stands where it is held, to the rounding of an answer. */
final class HeldRules {
  private static final BigDecimal HALF_A_STEP = new BigDecimal("0.0000005");

  private HeldRules() {}

  static void check(List<Placed> placed, Breaches breaches) {
    for (Placed p : placed) {
      Held held = p.flat().held();
      if (held.left() != null) {
        checkEdge(p, "left", p.at().left(), Exact.of(held.left()), breaches);
      }
      if (held.top() != null) {
        checkEdge(p, "top", p.at().top(), Exact.of(held.top()), breaches);
      }
      if (held.scale() != null && !keepsScale(p, Exact.of(held.scale()))) {
        breaches.add(
            "held", p.id() + " is held at scale " + held.scale() + ", not at " + p.scale());
      }
    }
  }

  private static void checkEdge(
      Placed p, String edge, BigDecimal is, BigDecimal held, Breaches breaches) {
    BigDecimal moved = is.subtract(held).abs();
    if (Exact.above(moved, HALF_A_STEP)) {
      breaches.add(
          "held", p.id() + " is held by its " + edge + " edge but moved by " + Exact.pt(moved));
    }
  }

  /**
   * Whether the two scales agree once rounded down to twelve digits. In a group it is the common
   * scale that was rounded, so there one unit of it may be lost.
   */
  private static boolean keepsScale(Placed p, BigDecimal held) {
    if (p.scale().round(Exact.TWELVE_DOWN).compareTo(held.round(Exact.TWELVE_DOWN)) == 0) {
      return true;
    }
    BigDecimal ratio = Placed.ratio(p.flat());
    BigDecimal unit = Exact.unitInTwelfth(Quotient.of(held).per(ratio).shown()).multiply(ratio);
    boolean lostLess = p.scale().subtract(held).abs().compareTo(unit) < 0;
    return p.flat().group() != null && lostLess;
  }
}
