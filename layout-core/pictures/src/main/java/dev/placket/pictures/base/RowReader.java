package dev.placket.pictures.base;

import java.io.Closeable;

/**
 * One reading of the pixels of a raster, row by row from the top: 8-bit sRGB with alpha not
 * multiplied in, as {@code 0xAARRGGBB}. A picture need never stand in memory as a whole.
 */
public interface RowReader extends Closeable {
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
}
