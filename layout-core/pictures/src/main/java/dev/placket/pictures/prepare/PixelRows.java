package dev.placket.pictures.prepare;

import dev.placket.pictures.base.PictureException;

/**
 * A picture as rows of pixels that can be read from the top as often as needed, so that no step has
 * to hold all of them: 8-bit sRGB with alpha not multiplied in, as {@code 0xAARRGGBB}.
 */
public interface PixelRows {
  /** Pixels across; at least 1. */
  int width();

  /** Rows; at least 1. */
  int height();

  /**
   * Begins at the top.
   *
   * @throws PictureException if what the rows are read from is faulty
   */
  Cursor open() throws PictureException;

  /** One reading from top to bottom. */
  interface Cursor extends AutoCloseable {
    /**
     * Fills in the next row; a caller asks for no more than there are.
     *
     * @param row takes the pixels; at least as long as a row
     * @throws PictureException if what the rows are read from is faulty
     */
    void next(int[] row) throws PictureException;

    /** Lets go of what the reading holds. */
    @Override
    default void close() {}
  }
}
