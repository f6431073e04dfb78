package dev.placket.pictures;

import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.density.PixelSize;
import dev.placket.pictures.raster.RasterHead;
import org.jspecify.annotations.Nullable;

/**
 * What the header of a raster states, before any pixel is looked at.
 *
 * @param format what its bytes are, as {@link Picture#format()} has it
 * @param pixels its size, rotated upright
 * @param alpha whether its pixels may be clear
 * @param density as the file states it, rotated with the pixels; null if it states none
 */
public record PictureHead(
    String format, PixelSize pixels, boolean alpha, @Nullable PixelDensity density) {
  static PictureHead of(RasterHead h) {
    return new PictureHead(
        h.format(), new PixelSize(h.seenWidth(), h.seenHeight()), h.alpha(), h.seenDensity());
  }
}
