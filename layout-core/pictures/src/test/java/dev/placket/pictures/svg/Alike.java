package dev.placket.pictures.svg;

/** How far two renderings differ: by levels of premultiplied channels. */
final class Alike {
  /** Levels by which the edge of a curve may differ that is made of other pieces: an eighth. */
  static final int LEVELS = 32;

  /** Levels that nobody takes for an edge. */
  private static final int CLEAR = 64;

  /** As many pixels have to differ clearly, 5 square units. */
  private static final int PIXELS = 20;

  private Alike() {}

  /** The largest difference of a channel in any pixel. */
  static int worst(int[] a, int[] b) {
    int worst = 0;
    for (int i = 0; i < a.length; i++) {
      worst = Math.max(worst, difference(a[i], b[i]));
    }
    return worst;
  }

  static boolean clearlyDiffer(int[] a, int[] b) {
    int n = 0;
    for (int i = 0; i < a.length; i++) {
      n += difference(a[i], b[i]) > CLEAR ? 1 : 0;
    }
    return n >= PIXELS;
  }

  /** The first pixel that differs most, for messages. */
  static String where(int[] a, int[] b, int width) {
    int worst = worst(a, b);
    int n = 0;
    int first = -1;
    for (int i = 0; i < a.length; i++) {
      int d = difference(a[i], b[i]);
      first = first < 0 && d == worst ? i : first;
      n += d > LEVELS ? 1 : 0;
    }
    return String.format(
        "by %d levels at pixel (%d, %d), %08x where %08x is expected; %d pixels differ",
        worst, first % width, first / width, a[first], b[first], n);
  }

  static int difference(int a, int b) {
    int worst = Math.abs((a >>> 24) - (b >>> 24));
    for (int shift = 0; shift < 24; shift += 8) {
      int one = (a >> shift & 255) * (a >>> 24) / 255;
      int other = (b >> shift & 255) * (b >>> 24) / 255;
      worst = Math.max(worst, Math.abs(one - other));
    }
    return worst;
  }
}
