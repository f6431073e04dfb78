package dev.placket.pictures.prepare;

import dev.placket.pictures.base.PictureException;

/** A rectangle of whole pixels out of other rows. */
final class CroppedRows implements PixelRows {
  private final PixelRows source;
  private final int left;
  private final int top;
  private final int width;
  private final int height;

  CroppedRows(PixelRows source, int left, int top, int width, int height) {
    if (left < 0
        || top < 0
        || width < 1
        || height < 1
        || left > source.width() - width
        || top > source.height() - height) {
      throw new IllegalArgumentException(
          width
              + " by "
              + height
              + " pixels from "
              + left
              + ","
              + top
              + " are not all inside "
              + source.width()
              + " by "
              + source.height());
    }
    this.source = source;
    this.left = left;
    this.top = top;
    this.width = width;
    this.height = height;
  }

  @Override
  public int width() {
    return width;
  }

  @Override
  public int height() {
    return height;
  }

  @Override
  public Cursor open() throws PictureException {
    Cursor in = source.open();
    int[] row = new int[source.width()];
    return new Cursor() {
      private int skip = top;

      @Override
      public void next(int[] out) throws PictureException {
        for (; skip >= 0; skip--) {
          in.next(row);
        }
        skip = 0;
        System.arraycopy(row, left, out, 0, width);
      }

      @Override
      public void close() {
        in.close();
      }
    };
  }
}
