package dev.placket.pictures.raster;

import dev.placket.layout.density.PixelDensity;
import java.io.EOFException;
import java.io.IOException;
import org.jspecify.annotations.Nullable;

/**
 * The four tags of an Exif block that say how large and which way up a picture is: 274, 282, 283,
 * 296 (TIFF 6.0). Nothing else of it is read, so nothing else can reach an output.
 */
record Exif(@Nullable PixelDensity density, int orientation) {
  private static final Exif SILENT = new Exif(null, 1);

  /** Reads the first directory of the block at a place; a damaged block states nothing. */
  static Exif read(SourceBytes bytes, long at, long length) throws IOException {
    boolean little = bytes.is(at, "II");
    if (length < 8 || !(little || bytes.is(at, "MM"))) {
      return SILENT;
    }
    try {
      TiffDirectory directory = TiffDirectory.read(bytes, at, at + length, little);
      return new Exif(directory.density(), directory.orientation());
    } catch (EOFException e) {
      return SILENT;
    }
  }
}
