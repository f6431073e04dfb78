package dev.placket.pictures.prepare;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/**
 * The filters of a PNG row (PNG, clause 9): whichever leaves the least sum of differences in each
 * row packs photographs best, and most line art; art of few flat colours packs best with none.
 */
final class PngFilter {
  private static final int KINDS = 5;
  private static final int WORD = 8;
  private static final VarHandle WORDS =
      MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

  private final int back;
  private final byte[] above;
  private final byte[][] tried;
  private final long[] sums = new long[KINDS];

  /**
   * Filters rows of so many bytes.
   *
   * @param back bytes from a sample to the same one of the pixel before
   */
  PngFilter(int rowBytes, int back) {
    this.back = back;
    this.above = new byte[rowBytes];
    this.tried = new byte[KINDS][rowBytes + 1];
    for (int k = 0; k < KINDS; k++) {
      tried[k][0] = (byte) k;
    }
  }

  /** The row with its filter byte in front; valid until the next call. */
  byte[] none(byte[] row) {
    System.arraycopy(row, 0, tried[0], 1, row.length);
    return tried[0];
  }

  /** Takes a row as the one above the next. */
  void pass(byte[] row) {
    System.arraycopy(row, 0, above, 0, row.length);
  }

  /** The row filtered by the kind with the least sum of absolute differences. */
  byte[] least(byte[] row) {
    for (int k = 0; k < KINDS; k++) {
      sums[k] = 0;
    }
    int i = 0;
    while (i < row.length) {
      int end = Math.min(row.length, i + WORD);
      if (i < back || end < i + WORD || !flat(row, i)) {
        differ(row, i, end);
      }
      i = end;
    }
    pass(row);
    int best = 0;
    for (int k = 1; k < KINDS; k++) {
      best = sums[k] < sums[best] ? k : best;
    }
    return tried[best];
  }

  /** Most of a drawing is like its left and upper neighbours: eight bytes at once then. */
  private boolean flat(byte[] row, int i) {
    long word = (long) WORDS.get(row, i);
    if (word != (long) WORDS.get(above, i) || word != (long) WORDS.get(row, i - back)) {
      return false;
    }
    WORDS.set(tried[0], i + 1, word);
    for (int k = 1; k < KINDS; k++) {
      WORDS.set(tried[k], i + 1, 0L);
    }
    if (word != 0) {
      for (int j = i; j < i + WORD; j++) {
        sums[0] += Math.abs(row[j]);
      }
    }
    return true;
  }

  private void differ(byte[] row, int from, int end) {
    for (int i = from; i < end; i++) {
      int x = row[i];
      int a = i < back ? 0 : row[i - back] & 255;
      int b = above[i] & 255;
      int c = i < back ? 0 : above[i - back] & 255;
      sums[0] += Math.abs(tried[0][i + 1] = (byte) x);
      sums[1] += Math.abs(tried[1][i + 1] = (byte) (x - a));
      sums[2] += Math.abs(tried[2][i + 1] = (byte) (x - b));
      sums[3] += Math.abs(tried[3][i + 1] = (byte) (x - (a + b) / 2));
      sums[4] += Math.abs(tried[4][i + 1] = (byte) (x - nearest(a, b, c)));
    }
  }

  private static int nearest(int a, int b, int c) {
    int pa = Math.abs(b - c);
    int pb = Math.abs(a - c);
    int pc = Math.abs(a + b - 2 * c);
    if (pa <= pb && pa <= pc) {
      return a;
    }
    return pb <= pc ? b : c;
  }
}
