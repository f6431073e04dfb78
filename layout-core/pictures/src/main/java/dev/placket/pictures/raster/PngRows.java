package dev.placket.pictures.raster;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.base.RowReader;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.rows.Pixels;
import dev.placket.pictures.rows.StoredRows;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;

/** Unpacks the pixels of a PNG row by row; only an interlaced one has to stand in memory. */
final class PngRows implements RowReader {
  /** Left, top, step across, step down of the seven passes (PNG, 8.1). */
  private static final int[][] PASSES = {
    {0, 0, 8, 8}, {4, 0, 8, 8}, {0, 4, 4, 8}, {2, 0, 4, 4}, {0, 2, 2, 4}, {1, 0, 2, 2}, {0, 1, 1, 2}
  };

  /** Some writers pack a few bytes too many. */
  private static final long SPARE = 1 << 20;

  private final Png png;
  private final PngSamples samples;
  private final Inflater inflater = new Inflater();
  private final PngData data;
  private final InputStream in;
  private byte[] packed;
  private byte[] above;
  private int y;

  private PngRows(Png png, InputStream stream) throws IOException {
    this.png = png;
    this.samples = new PngSamples(png);
    this.data = new PngData(stream);
    this.in = new InflaterInputStream(data, inflater, 1 << 14);
    this.packed = new byte[packedLength(png.width)];
    this.above = new byte[packed.length];
  }

  /** Opens the source anew; the caller closes what it gets. */
  static RowReader open(Png png, PictureSource source, ReadLimits limits) throws PictureException {
    limits.checkMemory(png.name, memory(png));
    InputStream stream = null;
    try {
      stream = new BufferedInputStream(source.open(), 1 << 16);
      stream.skipNBytes(png.data);
      PngRows rows = new PngRows(png, stream);
      return png.interlaced ? rows.interlaced() : rows;
    } catch (IOException e) {
      closeQuietly(stream);
      throw damaged(png.name, e);
    }
  }

  /** Two packed rows, an unpacked one and the edges that are looked at; or all. */
  private static long memory(Png png) {
    long row = ((long) png.width * png.bitsPerPixel() + 7) / 8;
    return png.interlaced ? 4L * png.width * png.height + 2 * row : 2 * row + 4L * png.width;
  }

  private int packedLength(int width) {
    return (int) (((long) width * png.bitsPerPixel() + 7) / 8);
  }

  @Override
  public int width() {
    return png.width;
  }

  @Override
  public int height() {
    return png.height;
  }

  @Override
  public void next(int[] row) throws PictureException {
    if (y == png.height) {
      throw new IllegalStateException("there are only " + y + " rows");
    }
    try {
      packedRow();
      samples.unpack(packed, png.width, row, 0, 1);
      y++;
      if (y == png.height) {
        end();
      }
    } catch (IOException | IndexOutOfBoundsException e) {
      throw damaged(png.name, e);
    }
  }

  private RowReader interlaced() throws PictureException {
    int[] argb = new int[png.width * png.height];
    try (this) {
      for (int[] pass : PASSES) {
        pass(argb, pass[0], pass[1], pass[2], pass[3]);
      }
      end();
    } catch (IOException | IndexOutOfBoundsException e) {
      throw damaged(png.name, e);
    }
    return new StoredRows(new Pixels(png.width, png.height, argb));
  }

  private void pass(int[] argb, int left, int top, int stepX, int stepY) throws IOException {
    int w = (png.width - left + stepX - 1) / stepX;
    int h = (png.height - top + stepY - 1) / stepY;
    if (w <= 0 || h <= 0) {
      return;
    }
    packed = new byte[packedLength(w)];
    above = new byte[packed.length];
    for (y = 0; y < h; y++) {
      packedRow();
      samples.unpack(packed, w, argb, (top + y * stepY) * png.width + left, stepX);
    }
  }

  /** Reads the next packed row and undoes its filter; the one before stays in {@code above}. */
  private void packedRow() throws IOException {
    byte[] swap = above;
    above = packed;
    packed = swap;
    if (y == 0) {
      java.util.Arrays.fill(above, (byte) 0);
    }
    int filter = in.read();
    if (filter < 0 || filter > 4 || in.readNBytes(packed, 0, packed.length) < packed.length) {
      throw new IOException("row " + y + " is missing or has filter " + filter);
    }
    PngUnfilter.undo(filter, packed, above, Math.max(1, png.bitsPerPixel() / 8));
  }

  /** Reads on to the checksums behind the pixels: of the packed data, and of its last chunk. */
  private void end() throws IOException {
    if (in.skip(SPARE) == SPARE) {
      throw new IOException("far more pixels than its header states");
    }
    data.skip(Long.MAX_VALUE);
  }

  private static PictureException damaged(String name, Exception e) {
    return new PictureException(
        Fault.content(name, "the PNG is damaged or cut short")
            .in("pixels")
            .remedy("export the picture again"),
        e);
  }

  private static void closeQuietly(java.io.@org.jspecify.annotations.Nullable Closeable open) {
    try {
      if (open != null) {
        open.close();
      }
    } catch (IOException e) {
      // It was only read: nothing is lost.
    }
  }

  @Override
  public void close() {
    closeQuietly(in);
    inflater.end();
  }
}
