package dev.placket.pictures.raster;

import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorConvertOp;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.IOException;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import org.jspecify.annotations.Nullable;

/**
 * Brings a JPEG in printing colours into sRGB: by its own profile, or without one as if each ink
 * took its share of the light. The decoder drops profiles that lead only one way, from inks to
 * colours, and would look for a profile of the machine.
 */
final class JpegInks {
  private static final int INKS = 4;

  /** Of Adobe's segment: luminance, chrominance and black instead of four inks. */
  private static final int YCCK = 2;

  private final @Nullable ColorConvertOp op;
  private final boolean ycck;

  private JpegInks(@Nullable ColorSpace inks, boolean ycck) {
    ColorSpace screen = ColorSpace.getInstance(ColorSpace.CS_sRGB);
    this.op = inks == null ? null : new ColorConvertOp(inks, screen, null);
    this.ycck = ycck;
  }

  /**
   * How the inks of a file become colours.
   *
   * @return null without four inks, or without Adobe's segment, which states how they are stored
   */
  static @Nullable JpegInks of(byte[] jpeg) {
    byte[] profile = JpegCopy.profile(jpeg);
    int transform = JpegCopy.adobeTransform(jpeg);
    if (transform < 0 || JpegCopy.components(jpeg) != INKS) {
      return null;
    }
    ColorSpace space = profile == null ? null : ColourProfile.space(profile, INKS);
    return new JpegInks(space, transform == YCCK);
  }

  /** Whether the file has a profile that leads from its inks to colours. */
  boolean hasProfile() {
    return op != null;
  }

  BufferedImage read(ImageReader reader, ImageReadParam param) throws IOException {
    Raster stored = reader.readRaster(0, param);
    if (stored.getNumBands() != INKS) {
      throw new IOException("another number of channels than its header states");
    }
    int w = stored.getWidth();
    BufferedImage image = new BufferedImage(w, stored.getHeight(), BufferedImage.TYPE_3BYTE_BGR);
    WritableRaster inks = Raster.createInterleavedRaster(0, w, 1, INKS, null);
    WritableRaster colours = Raster.createInterleavedRaster(0, w, 1, 3, null);
    int[] row = new int[w * INKS];
    int[] rgb = new int[w * 3];
    for (int y = 0; y < stored.getHeight(); y++) {
      stored.getPixels(stored.getMinX(), stored.getMinY() + y, w, 1, row);
      for (int i = 0; i < row.length; i += INKS) {
        inks(row, i);
      }
      if (op == null) {
        shares(row, rgb);
      } else {
        inks.setPixels(0, 0, w, 1, row);
        op.filter(inks, colours);
        colours.getPixels(0, 0, w, 1, rgb);
      }
      image.getRaster().setPixels(0, y, w, 1, rgb);
    }
    return image;
  }

  /** Light that is left after one ink and black. */
  private static void shares(int[] row, int[] rgb) {
    for (int i = 0; i < row.length / INKS; i++) {
      int light = 255 - row[INKS * i + 3];
      for (int c = 0; c < 3; c++) {
        rgb[3 * i + c] = ((255 - row[INKS * i + c]) * light + 127) / 255;
      }
    }
  }

  /** Such files store 255 for no ink; of luminance and chrominance they store the inks. */
  private void inks(int[] row, int i) {
    if (ycck) {
      double luminance = row[i];
      double blue = row[i + 1] - 128;
      double red = row[i + 2] - 128;
      row[i] = level(luminance + 1.402 * red);
      row[i + 1] = level(luminance - 0.344136 * blue - 0.714136 * red);
      row[i + 2] = level(luminance + 1.772 * blue);
    } else {
      row[i] = 255 - row[i];
      row[i + 1] = 255 - row[i + 1];
      row[i + 2] = 255 - row[i + 2];
    }
    row[i + 3] = 255 - row[i + 3];
  }

  private static int level(double value) {
    return (int) Math.max(0, Math.min(255, Math.round(value)));
  }
}
