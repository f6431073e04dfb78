package dev.placket.pictures.rows;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.base.RowReader;

/** Rows turned and squared as a picture is to be seen. */
public final class TurnedRows {
  private TurnedRows() {}

  /**
   * Turned as Exif tag 274 says; all but a plain mirroring need the picture in memory.
   *
   * @param rows closed where the result does not go on with them
   */
  public static RowReader turned(RowReader rows, int orientation, String name, ReadLimits limits)
      throws PictureException {
    if (orientation < 2 || orientation > 8) {
      return rows;
    }
    if (orientation == 2) {
      return new MirroredRows(rows);
    }
    try (rows) {
      limits.checkMemory(name, 4L * rows.width() * rows.height());
      return new StoredRows(all(rows, orientation));
    }
  }

  private static Pixels all(RowReader rows, int orientation) throws PictureException {
    int width = rows.width();
    int height = rows.height();
    boolean swaps = orientation >= 5;
    boolean mirrored = orientation == 3 || orientation == 7 || orientation == 8;
    boolean upended = orientation != 5 && orientation != 8;
    int across = swaps ? height : width;
    int[] out = new int[Math.multiplyExact(width, height)];
    int[] row = new int[width];
    for (int y = 0; y < height; y++) {
      rows.next(row);
      int v = upended ? height - 1 - y : y;
      for (int x = 0; x < width; x++) {
        int u = mirrored ? width - 1 - x : x;
        out[swaps ? u * across + v : v * across + u] = row[x];
      }
    }
    return new Pixels(across, swaps ? width : height, out);
  }

  /** Left and right changed over, row by row. */
  private record MirroredRows(RowReader rows) implements RowReader {
    @Override
    public int width() {
      return rows.width();
    }

    @Override
    public int height() {
      return rows.height();
    }

    @Override
    public void next(int[] row) throws PictureException {
      rows.next(row);
      for (int l = 0, r = width() - 1; l < r; l++, r--) {
        int swap = row[l];
        row[l] = row[r];
        row[r] = swap;
      }
    }

    @Override
    public void close() {
      rows.close();
    }
  }
}
