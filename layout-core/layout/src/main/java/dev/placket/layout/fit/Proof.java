package dev.placket.layout.fit;

import java.math.BigDecimal;

/**
 * How good a fit is known to be.
 *
 * @param scale the common scale reached, before growth: points per drawing unit of the leading flat
 * @param bound no arrangement under the hard rules has a larger common scale than this; not below
 *     {@code scale}
 * @param steps the steps that the search took
 * @param provenForOrder whether the growth is known to be the largest for the relative order found
 */
public record Proof(BigDecimal scale, double bound, long steps, boolean provenForOrder) {
  private static final double PROVEN = 1e-6;

  /**
   * {@code bound / scale - 1}: the most by which the scale could still grow, as a share of it. Not
   * negative.
   */
  public double gap() {
    return Math.max(0, bound / scale.doubleValue() - 1);
  }

  /** Whether the scale is known to be the largest, to one part in a million. */
  public boolean proven() {
    return gap() <= PROVEN;
  }
}
