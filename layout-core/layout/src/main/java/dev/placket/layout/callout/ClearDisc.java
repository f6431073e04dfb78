package dev.placket.layout.callout;

import dev.placket.layout.units.PlanePoint;

/**
 * A disc on the sheet that leaders of others keep clear of.
 *
 * @param middle in points
 * @param radius in points; 0 for a dot
 */
public record ClearDisc(PlanePoint middle, double radius) {
  /**
   * Checks the radius.
   *
   * @throws IllegalArgumentException if it is negative
   */
  public ClearDisc {
    if (!(radius >= 0)) {
      throw new IllegalArgumentException("a disc with a radius of " + radius);
    }
  }

  /** The place of a dot. */
  static ClearDisc dot(PlanePoint spot) {
    return new ClearDisc(spot, 0);
  }
}
