package dev.placket.layout.sheet;

import dev.placket.layout.units.Length;

/**
 * The blank room along the paper's edges; none may be negative.
 *
 * <p>Printers leave 4 to 6 mm unprinted along each edge (common practice), so less is rarely wise.
 *
 * @param top along the upper edge
 * @param right along the right edge
 * @param bottom along the lower edge
 * @param left along the left edge
 */
public record Margins(Length top, Length right, Length bottom, Length left) {
  /**
   * Checks that none is negative.
   *
   * @throws IllegalArgumentException if one is
   */
  public Margins {
    if (Math.min(Math.min(top.pt(), right.pt()), Math.min(bottom.pt(), left.pt())) < 0) {
      throw new IllegalArgumentException(
          "a margin is negative: " + top + ", " + right + ", " + bottom + ", " + left);
    }
  }

  /** The same room along all four edges. */
  public static Margins all(Length each) {
    return new Margins(each, each, each, each);
  }
}
