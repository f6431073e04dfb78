package dev.placket.pictures.base;

import dev.placket.layout.units.Length;

/**
 * Below what a printed line, lettering or gap is warned of.
 *
 * @param line least width of a line
 * @param lettering least capital height
 * @param gap least clear gap between stitches
 */
public record PrintLimits(Length line, Length lettering, Length gap) {
  /**
   * 0.18 mm, 1.8 mm, 0.5 mm: the finest steps of line width (ISO 128) and lettering height (ISO
   * 3098) that sheets use, from memory; the gap is common practice.
   */
  public static final PrintLimits DEFAULT =
      new PrintLimits(Length.mm(0.18), Length.mm(1.8), Length.mm(0.5));
}
