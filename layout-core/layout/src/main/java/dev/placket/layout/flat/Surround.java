package dev.placket.layout.flat;

import dev.placket.layout.units.Length;

/**
 * The room round a flat's ink that does not grow with it: a caption strip below, lanes kept for
 * leaders.
 *
 * <p>The footprint at scale s is {@code max(s * ink width + left + right, leastWidth)} by {@code s
 * * ink height + top + bottom}; where the least width rules, the ink with its sides stands in the
 * middle.
 *
 * @param left kept free left of the ink; none of the five is negative
 * @param top kept free above the ink
 * @param right kept free right of the ink
 * @param bottom kept free below the ink, where a caption stands
 * @param leastWidth what the caption needs across
 */
public record Surround(Length left, Length top, Length right, Length bottom, Length leastWidth) {
  /** Nothing round the ink. */
  public static final Surround NONE =
      new Surround(Length.ZERO, Length.ZERO, Length.ZERO, Length.ZERO, Length.ZERO);

  /**
   * Checks the signs.
   *
   * @throws IllegalArgumentException if one is negative
   */
  public Surround {
    double least =
        Math.min(
            Math.min(Math.min(left.pt(), top.pt()), Math.min(right.pt(), bottom.pt())),
            leastWidth.pt());
    if (least < 0) {
      throw new IllegalArgumentException("a surround has a negative side: " + least + " pt");
    }
  }

  /** A caption strip below the ink, of the height given and at least as wide as its text. */
  public static Surround caption(Length height, Length leastWidth) {
    return new Surround(Length.ZERO, Length.ZERO, Length.ZERO, height, leastWidth);
  }
}
