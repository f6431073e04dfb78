package dev.placket.pictures.prepare;

import dev.placket.pictures.base.PictureException;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Rows scaled by the exact mean of the area that each new pixel covers, colours weighted by alpha:
 * nothing shifts, no hidden colour bleeds in, and both axes may have any ratio. It averages the
 * values as they are encoded (sRGB): a printer lays ink by them (ISO 32000-1, 10.3.3), so thin dark
 * lines keep theirs; averaged by light, a line of a pixel and a half loses a quarter of it.
 * O(pixels of the source), holding one row of it and the sums of its columns.
 *
 * <p>Each weight is a whole number of the finest common parts of old and new pixels, and all sums
 * stay under 2^53, so they are exact and the only rounding is the last one.
 */
public final class AreaRows implements PixelRows {
  private static final int CHANNELS = 4;
  private final PixelRows source;
  private final int width;
  private final int height;

  /**
   * Scales rows.
   *
   * @param width pixels across; at least 1
   * @param height rows; at least 1
   */
  public AreaRows(PixelRows source, int width, int height) {
    this.source = source;
    this.width = width;
    this.height = height;
  }

  @Override
  public int width() {
    return width;
  }

  @Override
  public int height() {
    return height;
  }

  @Override
  public Cursor open() throws PictureException {
    return new Averaging(source.open());
  }

  /** One pass: source rows are summed down their columns, and those across once a new row. */
  private final class Averaging implements Cursor {
    private final Cursor in;
    private final int[] row = new int[source.width()];
    private final AreaShares across = new AreaShares(source.width(), width);
    private final AreaShares down = new AreaShares(source.height(), height);
    private final ColumnSums columns = new ColumnSums(source.width());
    private final long[] sums = new long[CHANNELS];
    private final int[] firsts = IntStream.range(0, width).map(across::first).toArray();
    private final int[] lasts = IntStream.range(0, width).map(across::last).toArray();
    private int read;
    private int y;

    Averaging(Cursor in) {
      this.in = in;
    }

    @Override
    public void next(int[] out) throws PictureException {
      columns.clear();
      int last = down.last(y);
      for (int v = down.first(y); v <= last; v++) {
        if (v >= read) {
          in.next(row);
          read = v + 1;
        }
        columns.add(row, down.weight(y, v));
      }
      y++;
      double area = (double) across.whole() * down.whole();
      for (int x = 0; x < width; x++) {
        out[x] = pixel(x, area);
      }
    }

    /** Only the first and the last column may be shared with a neighbour. */
    private int pixel(int x, double area) {
      Arrays.fill(sums, 0);
      int first = firsts[x];
      int last = lasts[x];
      columns.addTo(sums, first, across.weight(x, first));
      for (int u = first + 1; u < last; u++) {
        columns.addTo(sums, u, across.parts());
      }
      if (last > first) {
        columns.addTo(sums, last, across.weight(x, last));
      }
      return AreaRows.pixel(sums, area);
    }

    @Override
    public void close() {
      in.close();
    }
  }

  /** Sums hold alpha, then red, green and blue times alpha. */
  private static int pixel(long[] sums, double area) {
    double alpha = sums[0];
    int a = (int) (alpha / area + 0.5);
    if (a == 0) {
      return 0;
    }
    return a << 24
        | (int) (sums[1] / alpha + 0.5) << 16
        | (int) (sums[2] / alpha + 0.5) << 8
        | (int) (sums[3] / alpha + 0.5);
  }
}
