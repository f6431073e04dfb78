package dev.placket.pictures.prepare;

import dev.placket.pictures.RasterPicture;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.RowReader;

/** The pixels of a raster that was read. */
final class RasterRows implements PixelRows {
  private final RasterPicture raster;

  RasterRows(RasterPicture raster) {
    this.raster = raster;
  }

  @Override
  public int width() {
    return raster.width();
  }

  @Override
  public int height() {
    return raster.height();
  }

  @Override
  public Cursor open() {
    RowReader in = raster.rows();
    return new Cursor() {
      @Override
      public void next(int[] row) throws PictureException {
        in.next(row);
      }

      @Override
      public void close() {
        in.close();
      }
    };
  }
}
