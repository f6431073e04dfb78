package dev.placket.pictures.ink;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.base.Ground;
import dev.placket.pictures.rows.Pixels;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Finds the first and the last ink of a run of pixels. Plain ground is passed over by comparing
 * whole runs, which goes at the speed of memory.
 */
final class InkScan {
  private static final int BLOCK = 256;
  private static final int TRY = 64;

  private final GroundLook look;
  private final int[] plain;

  InkScan(GroundLook look, int width) {
    this.look = look;
    this.plain = new int[width];
    Arrays.fill(plain, look.plain());
  }

  /** The first ink from {@code from} on, or −1 if there is none before {@code to}. */
  int first(int[] a, int from, int to) {
    int i = from;
    while (i < to) {
      int same = Arrays.mismatch(a, i, to, plain, 0, to - i);
      if (same < 0) {
        return -1;
      }
      i += same;
      int stop = Math.min(to, i + TRY);
      int begun = i;
      for (; i < stop; i++) {
        if (!look.isGround(a[i])) {
          return i;
        }
      }
      learn(a, begun, stop);
    }
    return -1;
  }

  /** The last ink before {@code to}, or −1 if there is none from {@code from} on. */
  int last(int[] a, int from, int to) {
    int end = to;
    while (end > from) {
      int start = Math.max(from, end - BLOCK);
      if (!Arrays.equals(a, start, end, plain, 0, end - start)) {
        for (int i = end - 1; i >= start; i--) {
          if (!look.isGround(a[i])) {
            return i;
          }
        }
        learn(a, start, end);
      }
      end = start;
    }
    return -1;
  }

  /** Clear pixels may hide any colour: what all of a run of ground has becomes the plain one. */
  private void learn(int[] a, int from, int to) {
    if (to - from >= TRY
        && a[from] != plain[0]
        && Arrays.mismatch(a, from, to - 1, a, from + 1, to) < 0) {
      Arrays.fill(plain, a[from]);
    }
  }

  /**
   * The box of all ink of a part of a picture in memory, or null: from the edges inward, so that
   * what lies inside is never read.
   */
  @Nullable InkedBox box(Pixels p, int left, int top, int right, int bottom) {
    if (look.ground() == Ground.OPAQUE_OTHER) {
      return new InkedBox(left, top, right, bottom);
    }
    int[] a = p.argb();
    int w = p.width();
    int y0 = top;
    while (y0 < bottom && first(a, y0 * w + left, y0 * w + right) < 0) {
      y0++;
    }
    if (y0 == bottom) {
      return null;
    }
    int y1 = bottom - 1;
    while (y1 > y0 && first(a, y1 * w + left, y1 * w + right) < 0) {
      y1--;
    }
    int x0 = right;
    int x1 = left - 1;
    for (int y = y0; y <= y1; y++) {
      int l = first(a, y * w + left, y * w + x0);
      x0 = l < 0 ? x0 : l - y * w;
      int r = last(a, y * w + x1 + 1, y * w + right);
      x1 = r < 0 ? x1 : r - y * w;
    }
    return new InkedBox(x0, y0, x1 + 1, y1 + 1);
  }
}
