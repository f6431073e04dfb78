package dev.placket.layout.image;

import java.io.Closeable;

/**
 * The pixels of a raster, row by row from the top: 8-bit sRGB with alpha not multiplied in, as
 * {@code 0xAARRGGBB}.
 *
 * <p>A picture need never stand in memory as a whole to be looked at. Rows come in the order in
 * which the file holds them; {@link RasterFile#rows} turns and squares them.
 */
interface PixelRows extends Closeable {
  /** Pixels across. */
  int width();

  /** Pixels down. */
  int height();

  /**
   * Fills the first {@link #width()} places of an array with the next row.
   *
   * @throws PictureException if the file is damaged there
   * @throws IllegalStateException after the last row
   */
  void next(int[] row) throws PictureException;

  /** Lets go of what is open; never fails, and may be called again. */
  @Override
  void close();

  /** All rows at once: 4 bytes of memory for each pixel. */
  default Pixels all() throws PictureException {
    int[] argb = new int[Math.multiplyExact(width(), height())];
    int[] row = new int[width()];
    for (int y = 0; y < height(); y++) {
      next(row);
      System.arraycopy(row, 0, argb, y * width(), row.length);
    }
    return new Pixels(width(), height(), argb);
  }
}
