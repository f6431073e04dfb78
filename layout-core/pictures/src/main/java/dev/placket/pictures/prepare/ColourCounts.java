package dev.placket.pictures.prepare;

import dev.placket.pictures.base.PictureException;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** The distinct colours of a picture, in the order of their values, with how often each occurs. */
final class ColourCounts {
  /** A picture with more colours than this is a photograph, which no palette holds unseen. */
  static final int MOST = 1 << 16;

  private static final int SPREAD = 0x9E3779B9;

  private int bits = 10;
  private int[] keys = new int[1 << bits];
  private long[] counts = new long[1 << bits];
  private int size;

  private ColourCounts() {}

  /** Reads all rows once, or null if there are too many colours. O(pixels). */
  static @Nullable ColourCounts of(PixelRows rows) throws PictureException {
    ColourCounts counts = new ColourCounts();
    int[] row = new int[rows.width()];
    int[] kept = new int[rows.width()];
    int times = 0;
    try (PixelRows.Cursor in = rows.open()) {
      for (int y = 0; y < rows.height(); y++) {
        in.next(row);
        if (times > 0 && !Arrays.equals(row, kept)) {
          counts.addRow(kept, times);
          times = 0;
          if (counts.size > MOST) {
            return null;
          }
        }
        if (times++ == 0) {
          System.arraycopy(row, 0, kept, 0, row.length);
        }
      }
    }
    counts.addRow(kept, times);
    return counts.size > MOST ? null : counts;
  }

  private void addRow(int[] row, int times) {
    int from = 0;
    for (int x = 1; x <= row.length; x++) {
      if (x == row.length || row[x] != row[from]) {
        add(row[from], (long) (x - from) * times);
        from = x;
      }
    }
  }

  private void add(int argb, long count) {
    // What is clear is one colour, whatever stands under it.
    int key = argb >>> 24 == 0 ? 0 : argb;
    int slot = slot(key);
    if (counts[slot] == 0) {
      if (2 * ++size > keys.length) {
        grow();
        slot = slot(key);
      }
      keys[slot] = key;
    }
    counts[slot] += count;
  }

  private void grow() {
    int[] oldKeys = keys;
    long[] oldCounts = counts;
    bits++;
    keys = new int[1 << bits];
    counts = new long[1 << bits];
    for (int i = 0; i < oldKeys.length; i++) {
      if (oldCounts[i] > 0) {
        int slot = slot(oldKeys[i]);
        keys[slot] = oldKeys[i];
        counts[slot] = oldCounts[i];
      }
    }
  }

  private int slot(int key) {
    int slot = key * SPREAD >>> 32 - bits;
    while (counts[slot] > 0 && keys[slot] != key) {
      slot = slot + 1 & keys.length - 1;
    }
    return slot;
  }

  /** The colours by their values as unsigned numbers: the clear one, if there is one, is first. */
  int[] colours() {
    long[] found = new long[size];
    int at = 0;
    for (int i = 0; i < keys.length; i++) {
      if (counts[i] > 0) {
        found[at++] = Integer.toUnsignedLong(keys[i]);
      }
    }
    Arrays.sort(found);
    return Arrays.stream(found).mapToInt(k -> (int) k).toArray();
  }

  /** How many pixels have a colour that occurs. */
  long count(int argb) {
    return counts[slot(argb)];
  }
}
