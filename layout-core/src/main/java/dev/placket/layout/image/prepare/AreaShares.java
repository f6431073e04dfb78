package dev.placket.layout.image.prepare;

/**
 * How old pixels along an axis share out to new ones: both are cut into their finest common parts,
 * of which an old one holds {@code parts} and a new one {@code whole}.
 */
final class AreaShares {
  private final int length;
  private final int news;
  private final long parts;
  private final long whole;

  AreaShares(int olds, int news) {
    long common = gcd(olds, news);
    this.length = olds;
    this.news = news;
    this.parts = news / common;
    this.whole = olds / common;
  }

  private static long gcd(long a, long b) {
    return b == 0 ? a : gcd(b, a % b);
  }

  /** Parts of a new pixel. */
  long whole() {
    return whole;
  }

  /** The first old pixel that a new one meets. */
  int first(int at) {
    return (int) (at * whole / parts);
  }

  /** The last old pixel that a new one meets. */
  int last(int at) {
    return (int) Math.min(length - 1, ((at + 1) * whole - 1) / parts);
  }

  /** The parts that a new and an old pixel have in common. */
  long weight(int at, int old) {
    long from = Math.max(at * whole, old * parts);
    long to = Math.min((at + 1) * whole, (old + 1) * parts);
    return to - from;
  }

  /** Weighted sums of alpha and of colours times alpha for every new pixel of a row. */
  void average(int[] row, double[] into) {
    long left = whole;
    long a = 0;
    long r = 0;
    long g = 0;
    long b = 0;
    int at = 0;
    for (int u = 0; u < length; u++) {
      int p = row[u];
      int alpha = p >>> 24;
      int red = alpha * (p >> 16 & 255);
      int green = alpha * (p >> 8 & 255);
      int blue = alpha * (p & 255);
      long now = parts;
      while (now >= left) {
        into[at] = a + left * alpha;
        into[at + 1] = r + left * red;
        into[at + 2] = g + left * green;
        into[at + 3] = b + left * blue;
        at += 4;
        now -= left;
        left = whole;
        a = r = g = b = 0;
      }
      left -= now;
      a += now * alpha;
      r += now * red;
      g += now * green;
      b += now * blue;
    }
    assert at == 4 * news;
  }
}
