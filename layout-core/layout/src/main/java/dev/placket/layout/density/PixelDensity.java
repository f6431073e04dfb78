package dev.placket.layout.density;

/**
 * The density that a picture file states, for each axis, exactly as it states it.
 *
 * <p>A file that states none has none: callers hold null then, never a default.
 *
 * @param x across
 * @param y down
 */
public record PixelDensity(Rate x, Rate y) {
  /** The same density on both axes. */
  public static PixelDensity square(Rate rate) {
    return new PixelDensity(rate, rate);
  }

  /** How wide a pixel is for its height; 1 for a square pixel. */
  public double pixelWidthToHeight() {
    return y.perInch() / x.perInch();
  }
}
