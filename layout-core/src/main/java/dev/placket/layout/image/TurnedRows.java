package dev.placket.layout.image;

/** Rows turned and squared as a picture is to be seen. */
final class TurnedRows {
  private TurnedRows() {}

  /**
   * Turned as Exif tag 274 says; all but a plain mirroring need the picture in memory.
   *
   * @param rows closed where the result does not go on with them
   */
  static RowReader turned(RowReader rows, int orientation, String name, ReadLimits limits)
      throws PictureException {
    if (orientation < 2 || orientation > 8) {
      return rows;
    }
    if (orientation == 2) {
      return new MirroredRows(rows);
    }
    try (rows) {
      limits.checkMemory(name, 8L * rows.width() * rows.height());
      return new StoredRows(Pixels.of(rows).turned(orientation));
    }
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
