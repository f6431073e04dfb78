package dev.placket.pictures.raster;

/** Undoes the filters of PNG rows (PNG, 9.2). */
final class PngUnfilter {
  private PngUnfilter() {}

  /**
   * Turns a filtered row into its bytes, in place.
   *
   * @param filter 0 to 4
   * @param above the row before, undone; zeros before the first
   * @param back bytes from one pixel to the next, at least 1
   */
  static void undo(int filter, byte[] row, byte[] above, int back) {
    switch (filter) {
      case 1 -> left(row, back);
      case 2 -> up(row, above);
      case 3 -> mean(row, above, back);
      case 4 -> nearest(row, above, back);
      default -> {
        // Filter 0 leaves the bytes as they are.
      }
    }
  }

  private static void left(byte[] row, int back) {
    for (int i = back; i < row.length; i++) {
      row[i] += row[i - back];
    }
  }

  private static void up(byte[] row, byte[] above) {
    for (int i = 0; i < row.length; i++) {
      row[i] += above[i];
    }
  }

  private static void mean(byte[] row, byte[] above, int back) {
    for (int i = 0; i < row.length; i++) {
      int a = i < back ? 0 : row[i - back] & 255;
      row[i] += (byte) ((a + (above[i] & 255)) / 2);
    }
  }

  /** The one of left, above and above left that is nearest to left + above − above left. */
  private static void nearest(byte[] row, byte[] above, int back) {
    for (int i = 0; i < row.length; i++) {
      int a = i < back ? 0 : row[i - back] & 255;
      int b = above[i] & 255;
      int c = i < back ? 0 : above[i - back] & 255;
      int pa = Math.abs(b - c);
      int pb = Math.abs(a - c);
      int pc = Math.abs(a + b - 2 * c);
      row[i] += (byte) (pa <= pb && pa <= pc ? a : pb <= pc ? b : c);
    }
  }
}
