package dev.placket.pictures.prepare;

import java.util.Arrays;

/** The distinct colours of a picture while there are at most 256, and the index of each. */
final class ColourTable {
  static final int MOST = 256;
  private static final int SLOTS = 1024;
  private static final int SPREAD = 0x9E3779B9;

  private final int[] keys = new int[SLOTS];
  private final int[] values = new int[SLOTS];
  private int size;
  private boolean full;

  ColourTable() {
    Arrays.fill(values, -1);
  }

  /** Takes a colour in; after the 256th other one the table is no longer of use. */
  void add(int argb) {
    int slot = slot(argb);
    if (values[slot] >= 0) {
      return;
    }
    if (size == MOST) {
      full = true;
      return;
    }
    keys[slot] = argb;
    values[slot] = size++;
  }

  /** Whether every colour seen is in it. */
  boolean complete() {
    return !full;
  }

  int index(int argb) {
    return values[slot(argb)];
  }

  /**
   * The colours in their final order: the clearer first, so that the list of alphas is short, then
   * the darker; from here on indices follow it.
   */
  int[] inOrder() {
    int[] colours = new int[size];
    for (int s = 0; s < SLOTS; s++) {
      if (values[s] >= 0) {
        colours[values[s]] = keys[s];
      }
    }
    long[] sorted = new long[size];
    for (int i = 0; i < size; i++) {
      sorted[i] =
          (long) (colours[i] >>> 24) << 40 | (long) light(colours[i]) << 24 | rgb(colours[i]);
    }
    Arrays.sort(sorted);
    for (int i = 0; i < size; i++) {
      colours[i] = (int) (sorted[i] >> 40) << 24 | (int) (sorted[i] & 0xFFFFFF);
      values[slot(colours[i])] = i;
    }
    return colours;
  }

  private static int rgb(int c) {
    return c & 0xFFFFFF;
  }

  private static int light(int c) {
    return ((c >> 16 & 255) + 2 * (c >> 8 & 255) + (c & 255)) / 4;
  }

  private int slot(int argb) {
    int s = argb * SPREAD >>> 22;
    while (values[s] >= 0 && keys[s] != argb) {
      s = (s + 1) & (SLOTS - 1);
    }
    return s;
  }
}
