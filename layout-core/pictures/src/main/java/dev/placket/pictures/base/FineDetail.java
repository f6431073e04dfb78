package dev.placket.pictures.base;

import dev.placket.layout.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * The finest things in a picture, in its own units: drawing units, or pixels. A measure that a
 * picture does not have, or that is unknown, is null.
 *
 * @param line the width of the finest line; an estimate for a raster
 * @param lettering the capital height of the smallest lettering; null for a raster
 * @param gap the narrowest clear gap between two stitches of a dashed line, after their caps; 0 if
 *     the caps close it; null for a raster
 */
public record FineDetail(@Nullable Double line, @Nullable Double lettering, @Nullable Double gap) {
  /** Nothing fine was found. */
  public static final FineDetail NONE = new FineDetail(null, null, null);

  /** The same as printed, where one unit of the picture prints at a length. */
  public PrintedDetail printed(Length unit) {
    return new PrintedDetail(scaled(line, unit), scaled(lettering, unit), scaled(gap, unit));
  }

  private static @Nullable Length scaled(@Nullable Double units, Length unit) {
    return units == null ? null : Length.pt(units * unit.pt());
  }
}
