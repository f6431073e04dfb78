package dev.placket.pictures.prepare;

import java.util.Arrays;

/**
 * Weighted sums down each column of alpha and of the colours times alpha. Plain loops over arrays
 * of {@code int}: the compiler turns them into work on several columns at once.
 */
final class ColumnSums {
  /** A product is at most 255 times 255, so that so many of them stay within an {@code int}. */
  private static final long MOST = Integer.MAX_VALUE / (255 * 255);

  private final int columns;
  private final int[] alpha;
  private final int[] red;
  private final int[] green;
  private final int[] blue;

  /** What no longer fitted, alpha, red, green and blue of each column; empty until needed. */
  private long[] over = new long[0];

  private long held;

  ColumnSums(int columns) {
    this.columns = columns;
    this.alpha = new int[columns];
    this.red = new int[columns];
    this.green = new int[columns];
    this.blue = new int[columns];
  }

  void clear() {
    clearInts();
    Arrays.fill(over, 0);
  }

  private void clearInts() {
    Arrays.fill(alpha, 0);
    Arrays.fill(red, 0);
    Arrays.fill(green, 0);
    Arrays.fill(blue, 0);
    held = 0;
  }

  /** Adds a row so many times. */
  void add(int[] row, long weight) {
    for (long left = weight; left > 0; ) {
      if (held == MOST) {
        spill();
      }
      long now = Math.min(left, MOST - held);
      add(row, (int) now);
      held += now;
      left -= now;
    }
  }

  private void add(int[] row, int weight) {
    for (int u = 0; u < columns; u++) {
      alpha[u] += weight * (row[u] >>> 24);
    }
    add(row, 16, weight, red);
    add(row, 8, weight, green);
    add(row, 0, weight, blue);
  }

  private void add(int[] row, int shift, int weight, int[] sums) {
    for (int u = 0; u < columns; u++) {
      sums[u] += weight * (row[u] >>> 24) * (row[u] >> shift & 255);
    }
  }

  private void spill() {
    if (over.length == 0) {
      over = new long[4 * columns];
    }
    for (int u = 0; u < columns; u++) {
      over[4 * u] += alpha[u];
      over[4 * u + 1] += red[u];
      over[4 * u + 2] += green[u];
      over[4 * u + 3] += blue[u];
    }
    clearInts();
  }

  /** Adds a column so many times to sums of alpha, red, green and blue. */
  void addTo(long[] sums, int column, long weight) {
    sums[0] += weight * alpha[column];
    sums[1] += weight * red[column];
    sums[2] += weight * green[column];
    sums[3] += weight * blue[column];
    if (over.length > 0) {
      for (int k = 0; k < 4; k++) {
        sums[k] += weight * over[4 * column + k];
      }
    }
  }
}
