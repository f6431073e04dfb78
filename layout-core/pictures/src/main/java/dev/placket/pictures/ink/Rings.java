package dev.placket.pictures.ink;

import dev.placket.pictures.rows.Pixels;

/**
 * The outermost pixels of a raster, ring by ring: ring 0 is its very edge. They tell the ground,
 * and whether a frame line stands before it.
 */
final class Rings {
  /** A line thicker than this round a picture is no frame line. */
  static final int DEEPEST = 32;

  private final int width;
  private final int height;
  private final int depth;

  /** The first rows, the last rows (by row modulo depth), and both ends of every row. */
  private final int[][] top;

  private final int[][] bottom;
  private final int[] ends;

  Rings(int width, int height) {
    this.width = width;
    this.height = height;
    this.depth = depth(width, height);
    this.top = new int[depth][];
    this.bottom = new int[depth][];
    this.ends = new int[Math.multiplyExact(2 * depth, height)];
  }

  /** How many rings a picture of this size has, at most {@link #DEEPEST}. */
  static int depth(int width, int height) {
    return Math.max(1, Math.min(DEEPEST, Math.min(width, height) / 8));
  }

  /** Bytes of memory that the rings of a picture take. */
  static long memory(int width, int height) {
    return 8L * depth(width, height) * ((long) width + height);
  }

  int count() {
    return depth;
  }

  /** Takes in row y; rows come in order. */
  void add(int y, int[] row) {
    if (y < depth) {
      top[y] = java.util.Arrays.copyOf(row, width);
    }
    if (y >= height - depth) {
      bottom[y % depth] = java.util.Arrays.copyOf(row, width);
    }
    System.arraycopy(row, 0, ends, 2 * depth * y, depth);
    System.arraycopy(row, width - depth, ends, 2 * depth * y + depth, depth);
  }

  /** All pixels of a ring; corners twice. */
  int[] ring(int d) {
    int across = width - 2 * d;
    int down = height - 2 * d;
    int[] ring = new int[2 * across + 2 * down];
    System.arraycopy(top[d], d, ring, 0, across);
    System.arraycopy(bottom[(height - 1 - d) % depth], d, ring, across, across);
    for (int i = 0; i < down; i++) {
      ring[2 * across + 2 * i] = ends[2 * depth * (d + i) + d];
      ring[2 * across + 2 * i + 1] = ends[2 * depth * (d + i) + 2 * depth - 1 - d];
    }
    return ring;
  }

  /** A ring of a picture that stands in memory. */
  static int[] ring(Pixels p, int d) {
    int across = p.width() - 2 * d;
    int down = p.height() - 2 * d;
    int[] ring = new int[2 * across + 2 * down];
    System.arraycopy(p.argb(), d * p.width() + d, ring, 0, across);
    System.arraycopy(p.argb(), (p.height() - 1 - d) * p.width() + d, ring, across, across);
    for (int i = 0; i < down; i++) {
      int row = (d + i) * p.width();
      ring[2 * across + 2 * i] = p.argb()[row + d];
      ring[2 * across + 2 * i + 1] = p.argb()[row + p.width() - 1 - d];
    }
    return ring;
  }
}
