package dev.placket.pictures;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.raster.MemorySource;

/**
 * What coverage-guided fuzzing drives: any bytes end in a picture or in one PictureException.
 * DEVELOPERS.md has the command; what it found is kept under {@code findings} and read by {@link
 * FindingsTest}.
 */
public final class ReadersFuzz {
  /** Small, so that a lying header costs little. */
  private static final ReadLimits LIMITS =
      ReadLimits.DEFAULT.withPixels(1 << 18).withMemory(8L << 20).withBytes(1 << 20);

  private ReadersFuzz() {}

  /** Reads bytes in every way there is; anything thrown is a finding. */
  public static void fuzzerTestOneInput(byte[] bytes) {
    PictureSource source = new MemorySource("fuzz", bytes);
    try {
      PictureReader.head(source, LIMITS);
    } catch (PictureException e) {
      checkMessage(e);
    }
    try {
      PictureReader.probe(source, LIMITS);
    } catch (PictureException e) {
      checkMessage(e);
    }
    try {
      Picture picture = PictureReader.read(source, LIMITS);
      if (picture instanceof RasterPicture raster) {
        raster.image();
      }
    } catch (PictureException e) {
      checkMessage(e);
    }
  }

  private static void checkMessage(PictureException e) {
    String message = String.valueOf(e.getMessage());
    if (!message.startsWith("fuzz") || !message.contains("; ") || message.contains("\n")) {
      throw new IllegalStateException("no message for a designer: " + message, e);
    }
  }
}
