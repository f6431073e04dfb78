package dev.placket.pictures.prepare;

/**
 * How old pixels along an axis share out to new ones: both are cut into their finest common parts,
 * of which an old one holds {@code parts} and a new one {@code whole}.
 */
final class AreaShares {
  private final int length;
  private final long parts;
  private final long whole;

  AreaShares(int olds, int news) {
    long common = gcd(olds, news);
    this.length = olds;
    this.parts = news / common;
    this.whole = olds / common;
  }

  private static long gcd(long a, long b) {
    return b == 0 ? a : gcd(b, a % b);
  }

  /** Parts of an old pixel. */
  long parts() {
    return parts;
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
}
