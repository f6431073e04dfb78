package dev.placket.pictures.prepare;

import dev.placket.pictures.base.PictureException;
import org.jspecify.annotations.Nullable;

/**
 * Rows in as few colours, at most 256, as show the same picture: the peak signal to noise ratio is
 * at least 60 dB, with alpha multiplied in as well as on white, and no pixel is off by more than 12
 * levels of 255, taken as the root of the mean square over its channels. The same rows give the
 * same colours on any machine.
 */
public final class PaletteRows implements PixelRows {
  private final PixelRows source;
  private final int bits;
  private final int[] keys;
  private final int[] values;

  private PaletteRows(PixelRows source, FewColours.Exchange exchange) {
    int[] from = exchange.from();
    this.source = source;
    this.bits = 34 - Integer.numberOfLeadingZeros(from.length);
    this.keys = new int[1 << bits];
    this.values = new int[1 << bits];
    // A free slot holds the clear colour, which stands for itself.
    for (int i = 0; i < from.length; i++) {
      if (from[i] != 0) {
        int slot = slot(from[i]);
        keys[slot] = from[i];
        values[slot] = exchange.to()[i];
      }
    }
  }

  /**
   * The rows in few colours, or null where that would be seen. Reads all rows once. O(pixels), and
   * with the number of distinct colours, of which only 65,536 are looked at, times 256.
   *
   * @throws PictureException if the rows cannot be read
   */
  public static @Nullable PaletteRows of(PixelRows rows) throws PictureException {
    ColourCounts counts = ColourCounts.of(rows);
    FewColours.Exchange exchange = counts == null ? null : FewColours.of(counts);
    return exchange == null ? null : new PaletteRows(rows, exchange);
  }

  private int slot(int argb) {
    int slot = argb * 0x9E3779B9 >>> 32 - bits;
    while (keys[slot] != argb && keys[slot] != 0) {
      slot = slot + 1 & keys.length - 1;
    }
    return slot;
  }

  @Override
  public int width() {
    return source.width();
  }

  @Override
  public int height() {
    return source.height();
  }

  @Override
  public Cursor open() throws PictureException {
    Cursor in = source.open();
    return new Cursor() {
      @Override
      public void next(int[] row) throws PictureException {
        in.next(row);
        exchange(row);
      }

      @Override
      public void close() {
        in.close();
      }
    };
  }

  private void exchange(int[] row) {
    int last = 0;
    int value = 0;
    for (int x = 0; x < width(); x++) {
      int p = row[x];
      if (p != last) {
        last = p;
        value = p >>> 24 == 0 ? 0 : values[slot(p)];
      }
      row[x] = value;
    }
  }
}
