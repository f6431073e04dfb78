package dev.placket.packs.description;

import dev.placket.layout.units.PlanePoint;
import org.jspecify.annotations.Nullable;

/**
 * A named spot on a flat: given by its place, or by an element of the drawing, whose middle it is.
 *
 * @param at in the drawing's own units, or in pixels; null where an element is named
 * @param element the id of an element; null where a place is given
 */
public record PackPoint(@Nullable PlanePoint at, @Nullable String element) {
  /**
   * Checks that it is given in one way.
   *
   * @throws IllegalArgumentException if both or neither are given
   */
  public PackPoint {
    if ((at == null) == (element == null)) {
      throw new IllegalArgumentException("a point has a place or an element, not " + at + element);
    }
  }
}
