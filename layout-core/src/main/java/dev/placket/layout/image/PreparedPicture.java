package dev.placket.layout.image;

import dev.placket.layout.density.PixelSize;
import java.awt.image.BufferedImage;

/**
 * A raster made ready for a page: cropped to its ink, no larger than asked for.
 *
 * @param image 8-bit sRGB, with alpha that is not multiplied in; not shared with the source
 */
public record PreparedPicture(BufferedImage image) {
  /** Its size in pixels. */
  public PixelSize size() {
    return new PixelSize(image.getWidth(), image.getHeight());
  }
}
