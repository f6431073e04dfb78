package dev.placket.pictures.raster;

import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorConvertOp;
import java.awt.image.ColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.IOException;
import org.jspecify.annotations.Nullable;

/**
 * The rows of a decoded image as 8-bit sRGB, read from its samples: the colour models of Java
 * lighten greys on the way, because they take them for linear.
 */
final class SampleRows {
  private final Raster raster;
  private final int bands;
  private final int @Nullable [] palette;
  private final int[] most;
  private int[] samples = new int[0];

  /**
   * Reads an image.
   *
   * @param multiplied whether the file has alpha multiplied into its colours, of which decoders
   *     leave no trace in the image
   */
  SampleRows(BufferedImage image, boolean multiplied) throws IOException {
    if (multiplied && (isPlain(image) || !image.isAlphaPremultiplied())) {
      divide(image.getRaster());
    }
    BufferedImage plain = plain(image);
    this.raster = plain.getRaster();
    this.bands = raster.getNumBands();
    ColorModel model = plain.getColorModel();
    this.most = new int[bands];
    for (int i = 0; i < bands; i++) {
      most[i] = (1 << Math.min(16, raster.getSampleModel().getSampleSize(i))) - 1;
    }
    if (model instanceof IndexColorModel index) {
      palette = new int[index.getMapSize()];
      index.getRGBs(palette);
    } else {
      palette = null;
    }
  }

  /** Whether its samples are plain greys, palette places or sRGB. */
  private static boolean isPlain(BufferedImage image) {
    ColorModel model = image.getColorModel();
    ColorSpace space = model.getColorSpace();
    int type = image.getRaster().getTransferType();
    boolean whole = type == DataBuffer.TYPE_BYTE || type == DataBuffer.TYPE_USHORT;
    boolean ints = type == DataBuffer.TYPE_INT && space.isCS_sRGB();
    boolean grey = space.getType() == ColorSpace.TYPE_GRAY && image.getRaster().getNumBands() <= 2;
    boolean known = model instanceof IndexColorModel || grey || space.isCS_sRGB();
    return known && (whole || ints);
  }

  /** The image itself where its samples are plain, else converted. */
  private static BufferedImage plain(BufferedImage image) {
    if (isPlain(image)) {
      return image;
    }
    BufferedImage converted =
        new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_ARGB);
    new ColorConvertOp(null).filter(image, converted);
    return converted;
  }

  void row(int y, int[] argb) {
    int w = raster.getWidth();
    samples = raster.getPixels(raster.getMinX(), raster.getMinY() + y, w, 1, enough(w * bands));
    for (int x = 0; x < w; x++) {
      argb[x] = pixel(x * bands);
    }
  }

  private int[] enough(int length) {
    return samples.length == length ? samples : new int[length];
  }

  private int pixel(int i) {
    int[] p = palette;
    if (p != null) {
      // Behind the palette's end lies no colour: the row is damaged, as BandRows says.
      return p[samples[i]];
    }
    int first = level(i, 0);
    return switch (bands) {
      case 1 -> 0xFF000000 | first * 0x010101;
      case 2 -> level(i, 1) << 24 | first * 0x010101;
      case 3 -> 0xFF000000 | first << 16 | level(i, 1) << 8 | level(i, 2);
      default -> level(i, 3) << 24 | first << 16 | level(i, 1) << 8 | level(i, 2);
    };
  }

  private int level(int i, int band) {
    int value = samples[i + band];
    int m = most[band];
    return m == 255 ? value : (int) ((value * 255L + m / 2) / m);
  }

  /** Takes alpha out of the colours that it was multiplied into (TIFF 6.0, section 18). */
  private static void divide(WritableRaster raster) throws IOException {
    int bands = raster.getNumBands();
    if (bands != 2 && bands != 4) {
      throw new IOException("alpha beside " + bands + " samples");
    }
    int most = (1 << Math.min(16, raster.getSampleModel().getSampleSize(0))) - 1;
    int w = raster.getWidth();
    int[] row = new int[w * bands];
    for (int y = 0; y < raster.getHeight(); y++) {
      raster.getPixels(0, y, w, 1, row);
      for (int i = 0; i < row.length; i += bands) {
        long alpha = row[i + bands - 1];
        for (int c = i; c < i + bands - 1 && alpha > 0; c++) {
          row[c] = (int) Math.min(most, (row[c] * (long) most + alpha / 2) / alpha);
        }
      }
      raster.setPixels(0, y, w, 1, row);
    }
  }
}
