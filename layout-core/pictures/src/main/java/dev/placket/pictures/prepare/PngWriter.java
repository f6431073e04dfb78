package dev.placket.pictures.prepare;

import dev.placket.layout.density.PixelDensity;
import dev.placket.pictures.base.PictureException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import org.jspecify.annotations.Nullable;

/**
 * Writes PNGs without loss, as small as grey, palette, grey with alpha, RGB or RGBA of 1 to 8 bits
 * allow; the same rows give the same bytes on one build of Java (deflate is the JDK's own or the
 * system's zlib, whose versions pack differently).
 */
public final class PngWriter {
  /** A palette takes up to 1,036 bytes by itself. */
  private static final int SURE = 1 << 18;

  private PngWriter() {}

  /**
   * The bytes of a PNG.
   *
   * @param density pHYs, rounded to whole pixels per metre; null writes none
   * @throws PictureException if the rows cannot be read
   */
  public static byte[] encode(PixelRows rows, @Nullable PixelDensity density)
      throws PictureException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      write(rows, density, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /**
   * The bytes of a PNG of line art: no filter is tried, since none makes it smaller.
   *
   * @throws PictureException if the rows cannot be read
   */
  public static byte[] encodeLineArt(PixelRows rows) throws PictureException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      write(rows, PngKind.of(rows), PngPacking.PLAIN, null, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /**
   * Writes a PNG, reading the rows two or three times and holding two of them. O(pixels).
   *
   * @param density pHYs, rounded to whole pixels per metre; null writes none
   * @param out takes the bytes; stays open
   * @throws PictureException if the rows cannot be read
   * @throws IOException if {@code out} fails
   */
  public static void write(PixelRows rows, @Nullable PixelDensity density, OutputStream out)
      throws PictureException, IOException {
    PngKind kind = PngKind.of(rows);
    write(rows, kind, PngPacking.best(rows, kind), density, out);
  }

  /**
   * Writes a PNG with a palette of at most 256 colours if that is not seen ({@link PaletteRows}),
   * else without loss; a picture that needs no more is left as it is, so that doing it twice is
   * doing it once. Reads the rows up to eight times and holds the bytes. O(pixels).
   *
   * @param density pHYs, rounded to whole pixels per metre; null writes none
   * @param out takes the bytes; stays open
   * @return whether colours were exchanged
   * @throws PictureException if the rows cannot be read
   * @throws IOException if {@code out} fails
   */
  public static boolean writeFewColours(
      PixelRows rows, @Nullable PixelDensity density, OutputStream out)
      throws PictureException, IOException {
    PngKind kind = PngKind.of(rows);
    PixelRows few = kind.channels == 1 ? null : PaletteRows.of(rows);
    if (few != null) {
      byte[] palette = encode(few, density);
      if (pays(palette.length, rows, kind)) {
        out.write(palette);
        return true;
      }
    }
    write(rows, kind, PngPacking.best(rows, kind), density, out);
    return false;
  }

  /** One channel in place of several always pays, but for pictures hardly larger than a palette. */
  private static boolean pays(long palette, PixelRows rows, PngKind kind)
      throws PictureException, IOException {
    if ((long) rows.width() * rows.height() > SURE) {
      return true;
    }
    CountedBytes exact = new CountedBytes();
    write(rows, kind, PngPacking.best(rows, kind), null, exact);
    return palette < exact.count();
  }

  private static void write(
      PixelRows rows,
      PngKind kind,
      PngPacking packing,
      @Nullable PixelDensity density,
      OutputStream out)
      throws PictureException, IOException {
    PngChunks chunks = new PngChunks(out);
    chunks.header(rows.width(), rows.height(), kind, density);
    PngFilter filter = new PngFilter(kind.rowBytes(rows.width()), kind.channels);
    try (PixelData data = new PixelData(chunks::data, packing.strategy(), PixelData.LEVEL)) {
      kind.read(
          rows, (y, row) -> data.write(packing.filtered() ? filter.least(row) : filter.none(row)));
    }
    chunks.end();
  }
}
