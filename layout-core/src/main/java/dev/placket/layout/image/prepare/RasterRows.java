package dev.placket.layout.image.prepare;

import dev.placket.layout.image.Raster;

/** The pixels of a raster that was read. */
final class RasterRows implements PixelRows {
  private final Raster raster;

  RasterRows(Raster raster) {
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
    return PixelGrid.of(raster.image()).open();
  }
}
