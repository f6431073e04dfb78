package dev.placket.layout.check;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A fraction of two decimals, so that no division rounds.
 *
 * @param over the numerator
 * @param under the denominator, above zero
 */
record Quotient(BigDecimal over, BigDecimal under) implements Comparable<Quotient> {
  private static final MathContext SHOWN = new MathContext(15);

  static Quotient of(BigDecimal whole) {
    return new Quotient(whole, BigDecimal.ONE);
  }

  Quotient times(BigDecimal factor) {
    return new Quotient(over.multiply(factor), under);
  }

  Quotient per(BigDecimal divisor) {
    return new Quotient(over, under.multiply(divisor));
  }

  Quotient plus(Quotient other) {
    return new Quotient(
        over.multiply(other.under).add(other.over.multiply(under)), under.multiply(other.under));
  }

  /** Near enough to tell the power of ten and to print; never used to compare. */
  BigDecimal shown() {
    return over.divide(under, SHOWN);
  }

  static Quotient larger(Quotient a, Quotient b) {
    return a.compareTo(b) >= 0 ? a : b;
  }

  static Quotient smaller(Quotient a, Quotient b) {
    return a.compareTo(b) <= 0 ? a : b;
  }

  @Override
  public int compareTo(Quotient other) {
    return over.multiply(other.under).compareTo(other.over.multiply(under));
  }
}
