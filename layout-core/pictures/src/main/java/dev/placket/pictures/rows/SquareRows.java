package dev.placket.pictures.rows;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.RowReader;

/**
 * Rows with square pixels, from pixels that are wider or higher: the axis with too few is
 * stretched, so nothing is lost, mixing neighbours weighted by alpha.
 */
public final class SquareRows implements RowReader {
  private static final int ONE = 1 << 12;

  private final RowReader rows;
  private final int width;
  private final int height;
  private int[] above;
  private int[] below;
  private int have = -1;
  private int y;

  private SquareRows(RowReader rows, int width, int height) {
    this.rows = rows;
    this.width = width;
    this.height = height;
    this.above = new int[rows.width()];
    this.below = new int[rows.width()];
  }

  /** How wide or high so many pixels become that are so much too short. */
  public static int stretched(int pixels, double by) {
    return by <= 1 ? pixels : (int) Math.max(1, Math.round(pixels * by));
  }

  /**
   * Rows of pixels {@code aspect} times as wide as high, squared; the same rows where that is 1.
   */
  public static RowReader of(RowReader rows, double aspect) {
    int w = stretched(rows.width(), aspect);
    int h = stretched(rows.height(), 1 / aspect);
    return w == rows.width() && h == rows.height() ? rows : new SquareRows(rows, w, h);
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
  public void next(int[] row) throws PictureException {
    double at = Math.max(0, (y++ + 0.5) * rows.height() / height - 0.5);
    int top = (int) at;
    int weight = (int) ((at - top) * ONE);
    while (have < Math.min(top + 1, rows.height() - 1)) {
      int[] swap = above;
      above = below;
      below = swap;
      rows.next(below);
      have++;
    }
    boolean last = top >= rows.height() - 1;
    for (int x = 0; x < width; x++) {
      row[x] = last ? across(below, x) : mixed(across(above, x), across(below, x), weight);
    }
  }

  private int across(int[] row, int x) {
    if (width == rows.width()) {
      return row[x];
    }
    double at = Math.max(0, (x + 0.5) * rows.width() / width - 0.5);
    int left = (int) at;
    int right = Math.min(left + 1, rows.width() - 1);
    return mixed(row[left], row[right], (int) ((at - left) * ONE));
  }

  /** So much of the second, weighted by alpha, so that no hidden colour shows. */
  static int mixed(int p, int q, int weight) {
    if (p == q || weight == 0) {
      return p;
    }
    long a = (long) (p >>> 24) * (ONE - weight);
    long b = (long) (q >>> 24) * weight;
    long alpha = a + b;
    if (alpha == 0) {
      return 0;
    }
    int out = (int) ((alpha + ONE / 2) / ONE) << 24;
    for (int shift = 16; shift >= 0; shift -= 8) {
      long level = ((p >> shift & 255) * a + (q >> shift & 255) * b + alpha / 2) / alpha;
      out |= (int) level << shift;
    }
    return out;
  }

  @Override
  public void close() {
    rows.close();
  }
}
