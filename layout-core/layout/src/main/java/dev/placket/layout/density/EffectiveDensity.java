package dev.placket.layout.density;

import dev.placket.layout.units.Length;

/**
 * Pixels per printed inch at the size at which a picture is placed.
 *
 * @param x across; above zero
 * @param y down; above zero
 */
public record EffectiveDensity(double x, double y) {
  /**
   * Checks that both are above zero.
   *
   * @throws IllegalArgumentException with the two, if not
   */
  public EffectiveDensity {
    if (!(x > 0) || !(y > 0) || Double.isInfinite(x) || Double.isInfinite(y)) {
      throw new IllegalArgumentException("a print density is above zero, not " + x + " by " + y);
    }
  }

  /**
   * Pixels over placed inches, for each axis.
   *
   * @param pixelsX pixels across the placed part
   * @param placedWidth the printed width of the same part
   * @param pixelsY pixels down it
   * @param placedHeight its printed height
   * @throws IllegalArgumentException if a count or a length is not above zero
   */
  public static EffectiveDensity of(
      int pixelsX, Length placedWidth, int pixelsY, Length placedHeight) {
    return new EffectiveDensity(pixelsX / placedWidth.in(), pixelsY / placedHeight.in());
  }

  /** The poorer of the two axes. */
  public double least() {
    return Math.min(x, y);
  }
}
