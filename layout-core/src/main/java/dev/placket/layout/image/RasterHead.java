package dev.placket.layout.image;

import dev.placket.layout.density.PixelDensity;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the header of a raster states, before any pixel is decoded; sizes as stored, not turned. */
record RasterHead(
    String format,
    int width,
    int height,
    boolean alpha,
    @Nullable PixelDensity density,
    int orientation,
    List<String> notes) {

  RasterHead {
    notes = List.copyOf(notes);
  }

  static PictureException damaged(String name, String where, String found) {
    return new PictureException(name + ", " + where + ": " + found + "; export the picture again");
  }

  static void checkSize(String name, long width, long height, ReadLimits limits)
      throws PictureException {
    if (width < 1 || height < 1 || width > Integer.MAX_VALUE || height > Integer.MAX_VALUE) {
      throw damaged(name, "header", "states a size of " + width + " by " + height + " pixels");
    }
    if (width * height > Math.min(limits.pixels(), Integer.MAX_VALUE - 8)) {
      throw new PictureException(
          name
              + ", header: states "
              + width
              + " by "
              + height
              + " pixels, more than the limit of "
              + limits.pixels()
              + "; export it smaller");
    }
  }
}
