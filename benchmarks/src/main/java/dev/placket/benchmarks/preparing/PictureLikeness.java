package dev.placket.benchmarks.preparing;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.prepare.PixelGrid;
import dev.placket.pictures.prepare.PixelRows;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** Peak signal to noise ratio, over alpha and the colours multiplied by it; 255 is the peak. */
final class PictureLikeness {
  /** What nothing in 8 bits can be told from. */
  private static final double SAME = 99;

  private PictureLikeness() {}

  /** In decibels, 99 at most. */
  static double of(PixelRows one, PixelRows other) throws PictureException {
    if (one.width() != other.width() || one.height() != other.height()) {
      throw new IllegalStateException("pictures of two sizes");
    }
    int[] a = new int[one.width()];
    int[] b = new int[one.width()];
    double sum = 0;
    try (PixelRows.Cursor first = one.open();
        PixelRows.Cursor second = other.open()) {
      for (int y = 0; y < one.height(); y++) {
        first.next(a);
        second.next(b);
        for (int x = 0; x < a.length; x++) {
          sum += a[x] == b[x] ? 0 : squares(a[x], b[x]);
        }
      }
    }
    double mean = sum / (4.0 * one.width() * one.height());
    return mean == 0 ? SAME : Math.min(SAME, 10 * Math.log10(255 * 255 / mean));
  }

  private static double squares(int p, int q) {
    double alpha = (p >>> 24) - (q >>> 24);
    double sum = alpha * alpha;
    for (int shift = 0; shift < 24; shift += 8) {
      double d = multiplied(p, shift) - multiplied(q, shift);
      sum += d * d;
    }
    return sum;
  }

  private static double multiplied(int p, int shift) {
    return (p >>> 24) * (p >> shift & 255) / 255.0;
  }

  /** The pixels of a PNG with a palette, as the JDK reads it. */
  static PixelGrid read(Path png) throws IOException {
    BufferedImage image = ImageIO.read(png.toFile());
    int w = image.getWidth();
    int h = image.getHeight();
    BufferedImage argb = new BufferedImage(w, h, BufferedImage.TYPE_INT_ARGB);
    argb.setRGB(0, 0, w, h, image.getRGB(0, 0, w, h, null, 0, w), 0, w);
    return PixelGrid.of(argb);
  }
}
