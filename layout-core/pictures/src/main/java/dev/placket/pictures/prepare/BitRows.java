package dev.placket.pictures.prepare;

/** One bit for each pixel of a picture. */
final class BitRows {
  final int width;
  final int height;

  /** Words of 64 pixels to a row. */
  final int stride;

  private final long[][] rows;

  BitRows(int width, int height) {
    this.width = width;
    this.height = height;
    this.stride = (width + 63) / 64;
    this.rows = new long[height][stride];
  }

  boolean get(int x, int y) {
    return (rows[y][x >> 6] >>> x & 1) != 0;
  }

  /** Whether a pixel is set; outside the picture none is. */
  boolean inside(int x, int y) {
    return x >= 0 && x < width && y >= 0 && y < height && get(x, y);
  }

  void set(int x, int y) {
    rows[y][x >> 6] |= 1L << x;
  }

  /** The words of a row, shared. */
  long[] row(int y) {
    return rows[y];
  }
}
