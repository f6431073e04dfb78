package dev.placket.pictures.prepare;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.awt.image.Raster;
import java.awt.image.SinglePixelPackedSampleModel;

/**
 * The rows of an image as they lie in memory, so that nothing is copied or turned pixel by pixel.
 *
 * @param image of type {@link BufferedImage#TYPE_INT_ARGB} or {@link BufferedImage#TYPE_INT_RGB}
 */
public record ImageRows(BufferedImage image) implements PixelRows {
  private static final int OPAQUE = 0xFF000000;

  /**
   * Checks the type.
   *
   * @throws IllegalArgumentException if its values do not stand for themselves
   */
  public ImageRows {
    int type = image.getType();
    if (type != BufferedImage.TYPE_INT_ARGB && type != BufferedImage.TYPE_INT_RGB) {
      throw new IllegalArgumentException("an image of type INT_ARGB or INT_RGB, not " + image);
    }
  }

  @Override
  public int width() {
    return image.getWidth();
  }

  @Override
  public int height() {
    return image.getHeight();
  }

  @Override
  public Cursor open() {
    Raster raster = image.getRaster();
    SinglePixelPackedSampleModel model = (SinglePixelPackedSampleModel) raster.getSampleModel();
    DataBufferInt data = (DataBufferInt) raster.getDataBuffer();
    int[] pixels = data.getData();
    int first =
        data.getOffset()
            + model.getOffset(
                -raster.getSampleModelTranslateX(), -raster.getSampleModelTranslateY());
    int stride = model.getScanlineStride();
    boolean alpha = image.getType() == BufferedImage.TYPE_INT_ARGB;
    return new Cursor() {
      private int from = first;

      @Override
      public void next(int[] row) {
        System.arraycopy(pixels, from, row, 0, width());
        from += stride;
        for (int x = 0; !alpha && x < width(); x++) {
          row[x] |= OPAQUE;
        }
      }
    };
  }
}
