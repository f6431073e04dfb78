package dev.placket.pictures.raster;

import dev.placket.layout.density.PixelDensity;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.ReadLimit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the header of a raster states, before any pixel is decoded; sizes and densities as stored,
 * not turned.
 *
 * @param format in capitals, as {@code Picture.format()} has it
 * @param width in pixels
 * @param height in pixels
 * @param alpha whether any pixel may be clear
 * @param density as stated, or null
 * @param aspect how wide a pixel is for its height
 * @param orientation Exif tag 274, 1 to 8
 * @param multiplied whether alpha is multiplied into the colours
 * @param cost bytes of memory that decoding takes for each pixel that stands in memory
 * @param notes what a designer should know
 */
public record RasterHead(
    String format,
    int width,
    int height,
    boolean alpha,
    @Nullable PixelDensity density,
    double aspect,
    int orientation,
    boolean multiplied,
    int cost,
    List<PictureNote> notes) {
  /** Pixels wider or higher than this for the other side are taken for a mistake. */
  private static final double SLIMMEST = 10;

  /** With alpha, if any, beside the colours. */
  public RasterHead(
      String format,
      int width,
      int height,
      boolean alpha,
      @Nullable PixelDensity density,
      double aspect,
      int orientation,
      int cost,
      List<PictureNote> notes) {
    this(format, width, height, alpha, density, aspect, orientation, false, cost, notes);
  }

  /** Ignores an unlikely pixel shape, with a note, and an unknown orientation. */
  public RasterHead {
    if (!(aspect <= SLIMMEST) || !(aspect >= 1 / SLIMMEST)) {
      notes = new ArrayList<>(notes);
      notes.add(PictureNote.plain("states an unlikely pixel shape, which is ignored"));
      aspect = 1;
      density = null;
    }
    notes = List.copyOf(notes);
    orientation = orientation >= 1 && orientation <= 8 ? orientation : 1;
  }

  /** Whether width and height change places when the picture is seen as its file says. */
  boolean swaps() {
    return orientation >= 5;
  }

  /** The width in pixels as the file says it is to be seen. */
  public int seenWidth() {
    return swaps() ? height : width;
  }

  /** The height in pixels as the file says it is to be seen. */
  public int seenHeight() {
    return swaps() ? width : height;
  }

  /** The stated density, turned with the picture; null if there is none. */
  public @Nullable PixelDensity seenDensity() {
    PixelDensity d = density;
    return d != null && swaps() ? new PixelDensity(d.y(), d.x()) : d;
  }

  /** How wide a pixel is for its height, turned with the picture. */
  public double seenAspect() {
    return swaps() ? 1 / aspect : aspect;
  }

  static PictureException damaged(String name, String where, String found) {
    return new PictureException(
        Fault.content(name, found).in(where).remedy("export the picture again"));
  }

  static void checkSize(String name, long width, long height, ReadLimits limits)
      throws PictureException {
    if (width < 1 || height < 1 || width > Integer.MAX_VALUE || height > Integer.MAX_VALUE) {
      throw damaged(name, "header", "states a size of " + width + " by " + height + " pixels");
    }
    if (width * height > Math.min(limits.pixels(), Integer.MAX_VALUE - 8)) {
      throw PictureException.over(
          ReadLimit.PIXELS,
          Fault.limit(
                  name,
                  "states "
                      + width
                      + " by "
                      + height
                      + " pixels, more than the limit of "
                      + limits.pixels())
              .in("header")
              .remedy("export it smaller"));
    }
  }
}
