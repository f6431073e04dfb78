package dev.placket.pictures.rows;

import dev.placket.pictures.base.RowReader;

/** Rows of a picture that stands in memory. */
public final class StoredRows implements RowReader {
  private final Pixels pixels;
  private int y;

  /** A reading of these pixels from the top. */
  public StoredRows(Pixels pixels) {
    this.pixels = pixels;
  }

  @Override
  public int width() {
    return pixels.width();
  }

  @Override
  public int height() {
    return pixels.height();
  }

  @Override
  public void next(int[] row) {
    if (y == height()) {
      throw new IllegalStateException("there are only " + y + " rows");
    }
    System.arraycopy(pixels.argb(), y++ * width(), row, 0, width());
  }

  @Override
  public void close() {
    // Nothing is open.
  }
}
