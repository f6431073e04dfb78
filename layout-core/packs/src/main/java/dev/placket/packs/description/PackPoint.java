package dev.placket.packs.description;

import dev.placket.layout.units.PlanePoint;
import org.jspecify.annotations.Nullable;

/**
 * A named spot on a flat: given by its place, by shares of the drawing's bounds, or by an element
 * of the drawing, whose middle it is, or from which it is so far away.
 *
 * @param at in the drawing's own units, or in pixels; from the middle of an element where one is
 *     named; null where shares are given
 * @param element the id of an element; null where a place or shares are given
 * @param share across and down from the top left of what is drawn, 1 for all of it; else null
 */
public record PackPoint(
    @Nullable PlanePoint at, @Nullable String element, @Nullable PlanePoint share) {
  /**
   * Checks that it is given in one way.
   *
   * @throws IllegalArgumentException if several or none are given
   */
  public PackPoint {
    boolean one = element == null ? (at == null) != (share == null) : share == null;
    if (!one) {
      throw new IllegalArgumentException(
          "a point has a place, an element or shares, not " + at + element + share);
    }
  }
}
