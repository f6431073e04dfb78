package dev.placket.layout.solve.finish;

import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Surround;
import java.math.BigDecimal;

/**
 * A footprint in exact decimals, every number of the input read as the decimal it prints.
 *
 * @param scale of the flat
 * @param inkLeft the ink's left edge
 * @param inkTop the ink's top edge
 * @param edges of the footprint: left, top, right, bottom
 * @param near the same edges as doubles
 */
record Footprint(
    BigDecimal scale, BigDecimal inkLeft, BigDecimal inkTop, BigDecimal[] edges, double[] near) {
  private static final BigDecimal HALF = new BigDecimal("0.5");

  static BigDecimal exact(double number) {
    return BigDecimal.valueOf(number);
  }

  /** The longest side of the drawing in its own units. */
  static BigDecimal longest(Flat f) {
    BigDecimal w = exact(f.ink().right()).subtract(exact(f.ink().left()));
    return w.max(exact(f.ink().bottom()).subtract(exact(f.ink().top())));
  }

  /** The footprint of a flat at a scale with its ink at a spot. */
  static Footprint of(Flat f, BigDecimal scale, BigDecimal inkLeft, BigDecimal inkTop) {
    Surround s = f.surround();
    BigDecimal w = exact(f.ink().right()).subtract(exact(f.ink().left())).multiply(scale);
    BigDecimal h = exact(f.ink().bottom()).subtract(exact(f.ink().top())).multiply(scale);
    BigDecimal left = inkLeft.subtract(exact(s.left().pt()));
    BigDecimal right = inkLeft.add(w).add(exact(s.right().pt()));
    BigDecimal spare = exact(s.leastWidth().pt()).subtract(right.subtract(left));
    if (spare.signum() > 0) {
      left = left.subtract(spare.multiply(HALF));
      right = right.add(spare.multiply(HALF));
    }
    BigDecimal[] edges = {
      left, inkTop.subtract(exact(s.top().pt())), right, inkTop.add(h).add(exact(s.bottom().pt()))
    };
    double[] near = new double[4];
    for (int e = 0; e < 4; e++) {
      near[e] = edges[e].doubleValue();
    }
    return new Footprint(scale, inkLeft, inkTop, edges, near);
  }
}
