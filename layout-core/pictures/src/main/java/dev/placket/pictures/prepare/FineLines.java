package dev.placket.pictures.prepare;

import dev.placket.pictures.RasterPicture;
import dev.placket.pictures.base.FineDetail;
import dev.placket.pictures.base.PictureException;
import org.jspecify.annotations.Nullable;

/**
 * Estimates the finest line of a raster. The ink of a line across one pixel, added up along the row
 * and along the column, is t/cos and t/sin of its slant; both together give its thickness t in any
 * direction, also where it is finer than a pixel. The finest is the twentieth part of all inked
 * pixels from below, since ends and tips are finer than their line.
 */
public final class FineLines {
  /** Lines wider than this many pixels are none. */
  private static final int MOST = 40;

  private static final int BINS_PER_PIXEL = 20;
  private static final int FEWEST = 50;
  private static final double SHARE = 0.05;
  private static final int INKED = 77;
  private static final int NOTHING = 12;

  private final int width;
  private final int height;
  private final int[][] ink;
  private final long[] counts = new long[MOST * BINS_PER_PIXEL];
  private int read;

  private FineLines(PixelRows rows) {
    this.width = rows.width();
    this.height = rows.height();
    this.ink = new int[2 * MOST + 1][width];
  }

  /**
   * The finest line of a raster in its pixels; nothing for a photograph or another ground than
   * transparent or white. O(pixels), holding a band of rows.
   *
   * @throws PictureException if its pixels cannot be read
   */
  public static FineDetail of(RasterPicture raster) throws PictureException {
    PixelRows rows = new RasterRows(raster);
    GroundColour ground = GroundColour.of(rows, Preparing.lossy(raster));
    return of(rows, ground);
  }

  static FineDetail of(PixelRows rows, GroundColour ground) throws PictureException {
    boolean clear = ground.alpha() == 0;
    if (!clear && !ground.white()) {
      return FineDetail.NONE;
    }
    FineLines lines = new FineLines(rows);
    Double finest = lines.finest(rows, ground, clear);
    return new FineDetail(finest, null, null);
  }

  private @Nullable Double finest(PixelRows rows, GroundColour ground, boolean clear)
      throws PictureException {
    int[] row = new int[width];
    try (PixelRows.Cursor in = rows.open()) {
      for (int y = 0; y < height; y++) {
        for (; read < Math.min(height, y + MOST + 1); read++) {
          in.next(row);
          int[] to = ink[read % ink.length];
          for (int x = 0; x < width; x++) {
            to[x] = clear ? row[x] >>> 24 : ground.depth(ground.opaque(row[x]));
          }
        }
        count(y);
      }
    }
    long all = 0;
    for (long n : counts) {
      all += n;
    }
    if (all < FEWEST) {
      return null;
    }
    long seen = 0;
    int bin = 0;
    while ((seen += counts[bin]) < SHARE * all) {
      bin++;
    }
    return (bin + 0.5) / BINS_PER_PIXEL;
  }

  private void count(int y) {
    int[] row = ink[y % ink.length];
    for (int x = 0; x < width; x++) {
      if (row[x] < INKED) {
        continue;
      }
      double across = across(row, x);
      double down = down(x, y);
      double thickness = 1 / Math.hypot(1 / across, 1 / down);
      int bin = (int) (thickness * BINS_PER_PIXEL);
      if (bin < counts.length) {
        counts[bin]++;
      }
    }
  }

  /** Ink of the run of a row through a pixel, in whole pixels; without end if it is long. */
  private double across(int[] row, int x) {
    long sum = row[x];
    int left = x - 1;
    while (left >= 0 && x - left < MOST && row[left] > NOTHING) {
      sum += row[left--];
    }
    int right = x + 1;
    while (right < width && right - x < MOST && row[right] > NOTHING) {
      sum += row[right++];
    }
    return right - left > MOST ? Double.POSITIVE_INFINITY : sum / 255.0;
  }

  private double down(int x, int y) {
    long sum = ink[y % ink.length][x];
    int top = y - 1;
    int bottom = y + 1;
    while (top >= 0 && y - top < MOST && at(x, top) > NOTHING) {
      sum += at(x, top--);
    }
    while (bottom < height && bottom - y < MOST && at(x, bottom) > NOTHING) {
      sum += at(x, bottom++);
    }
    return bottom - top > MOST ? Double.POSITIVE_INFINITY : sum / 255.0;
  }

  private int at(int x, int y) {
    return ink[y % ink.length][x];
  }
}
