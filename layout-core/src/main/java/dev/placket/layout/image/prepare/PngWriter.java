package dev.placket.layout.image.prepare;

import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.image.PictureException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Writes PNGs without loss, as small as grey, palette, grey with alpha, RGB or RGBA of 1 to 8 bits
 * allow; the same rows give the same bytes on one build of Java (deflate is the JDK's own or the
 * system's zlib, whose versions pack differently).
 */
public final class PngWriter {
  /** Every so many rows, one band is packed on trial to choose the filter. */
  private static final int BAND = 8;

  private static final int BANDS_APART = 4;

  /** A trial that comes out so near says nothing; in the mean filters are worth 10 %. */
  private static final double NEAR = 1.02;

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
      write(rows, PngKind.of(rows), false, null, out);
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
    boolean filtered = kind.depth == 8 && filtersPay(rows, kind);
    write(rows, kind, filtered, density, out);
  }

  private static void write(
      PixelRows rows,
      PngKind kind,
      boolean filtered,
      @Nullable PixelDensity density,
      OutputStream out)
      throws PictureException, IOException {
    PngChunks chunks = new PngChunks(out);
    chunks.header(rows.width(), rows.height(), kind, density);
    try (PixelData data = new PixelData(chunks::data, differences(kind, filtered))) {
      pack(rows, kind, filtered, data, 1);
    }
    chunks.end();
  }

  private static boolean filtersPay(PixelRows rows, PngKind kind)
      throws PictureException, IOException {
    long[] bytes = new long[2];
    for (int i = 0; i < 2; i++) {
      int which = i;
      try (PixelData data = new PixelData((b, n) -> bytes[which] += n, differences(kind, i == 1))) {
        pack(rows, kind, i == 1, data, rows.height() > BAND * BANDS_APART ? BANDS_APART : 1);
      }
    }
    return bytes[1] < NEAR * bytes[0];
  }

  /** Indices into a palette repeat as a whole even where they are filtered. */
  private static boolean differences(PngKind kind, boolean filtered) {
    return filtered && kind.palette.length == 0;
  }

  private static void pack(
      PixelRows rows, PngKind kind, boolean filtered, PixelData data, int apart)
      throws PictureException, IOException {
    int w = rows.width();
    int[] row = new int[w];
    int[] above = new int[w];
    byte[] packed = new byte[kind.rowBytes(w)];
    PngFilter filter = new PngFilter(packed.length, kind.channels);
    try (PixelRows.Cursor in = rows.open()) {
      for (int y = 0; y < rows.height(); y++) {
        in.next(row);
        if (y / BAND % apart == 0) {
          if (y == 0 || !Arrays.equals(row, above)) {
            kind.pack(row, w, packed);
            System.arraycopy(row, 0, above, 0, w);
          }
          data.write(filtered ? filter.least(packed) : filter.none(packed));
        }
      }
    }
  }
}
