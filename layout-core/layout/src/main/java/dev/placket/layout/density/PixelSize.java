package dev.placket.layout.density;

/**
 * A size in whole pixels.
 *
 * @param width at least 1
 * @param height at least 1
 */
public record PixelSize(int width, int height) {
  /**
   * Checks that there is at least one pixel.
   *
   * @throws IllegalArgumentException with the size, if not
   */
  public PixelSize {
    if (width < 1 || height < 1) {
      throw new IllegalArgumentException(
          "a picture has at least one pixel, not " + width + " by " + height);
    }
  }
}
