package dev.placket.pictures.rows;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.RowReader;
import java.awt.image.BufferedImage;

/**
 * Decoded pixels: 8-bit sRGB with alpha not multiplied in, row by row, as {@code 0xAARRGGBB}.
 *
 * <p>Kept as plain numbers because the colour model of a decoded image may lighten greys on the
 * way.
 *
 * @param width above zero
 * @param height above zero
 * @param argb width times height of them, from the top left
 */
public record Pixels(int width, int height, int[] argb) {
  /** All rows that a reader has left: 4 bytes of memory for each pixel. */
  public static Pixels of(RowReader rows) throws PictureException {
    int[] argb = new int[Math.multiplyExact(rows.width(), rows.height())];
    int[] row = new int[rows.width()];
    for (int y = 0; y < rows.height(); y++) {
      rows.next(row);
      System.arraycopy(row, 0, argb, y * row.length, row.length);
    }
    return new Pixels(rows.width(), rows.height(), argb);
  }

  /** The pixels as an image, with alpha or without. */
  public BufferedImage toImage(boolean alpha) {
    int type = alpha ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB;
    BufferedImage image = new BufferedImage(width, height, type);
    image.setRGB(0, 0, width, height, argb, 0, width);
    return image;
  }
}
