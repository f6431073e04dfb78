package dev.placket.layout.flat;

import dev.placket.layout.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * The least and greatest printed size of a flat, as the longest side of its ink.
 *
 * @param least the size under which it cannot be read; not negative
 * @param greatest the size it never exceeds, null for none; not below {@code least}. Where both are
 *     one size, a fit's scale is rounded down: by one unit in its twelfth digit at most
 */
public record Limits(Length least, @Nullable Length greatest) {
  /** No limit either way. */
  public static final Limits NONE = new Limits(Length.ZERO, null);

  /**
   * Checks the order of the two.
   *
   * @throws IllegalArgumentException if greatest is under least, or least negative
   */
  public Limits {
    if (least.pt() < 0 || (greatest != null && greatest.compareTo(least) < 0)) {
      throw new IllegalArgumentException(
          "limits out of order: least " + least + ", greatest " + greatest);
    }
  }

  /** The greatest size in points, positive infinity where there is none. */
  public double greatestPt() {
    return greatest == null ? Double.POSITIVE_INFINITY : greatest.pt();
  }
}
