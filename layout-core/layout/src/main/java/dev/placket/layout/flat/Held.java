package dev.placket.layout.flat;

import dev.placket.layout.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * What of a placement must not move; null where it may.
 *
 * @param left the left edge of the ink on the sheet, or null
 * @param top the top edge of the ink on the sheet, or null
 * @param scale points per drawing unit, above zero, or null
 */
public record Held(@Nullable Length left, @Nullable Length top, @Nullable Double scale) {
  /** Everything may move. */
  public static final Held NOTHING = new Held(null, null, null);

  /**
   * Checks the scale.
   *
   * @throws IllegalArgumentException if it is not above zero
   */
  public Held {
    if (scale != null && !(scale > 0 && Double.isFinite(scale))) {
      throw new IllegalArgumentException("a held scale is above zero, not " + scale);
    }
  }

  /** The same edges held, at this scale. */
  public Held atScale(double points) {
    return new Held(left, top, points);
  }

  /** Whether anything is held. */
  public boolean any() {
    return left != null || top != null || scale != null;
  }
}
