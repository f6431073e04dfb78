package dev.placket.benchmarks.suite;

import java.awt.Color;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.Raster;

/**
 * How much of one picture is not in another. A pixel is wrong if in some channel it lies more than
 * 40 levels outside the range of the other's 3 by 3 neighbourhood, either way round: that forgives
 * the edges that two renderers smooth differently.
 */
final class Likeness {
  /** At most this share is wrong in a rendering that is right. */
  static final double RIGHT = 0.002;

  /** More than this share makes a rendering wrong. */
  static final double WRONG = 0.01;

  private static final int LEVELS = 40;
  private static final Color[] BACKGROUNDS = {Color.WHITE, Color.MAGENTA};

  private Likeness() {}

  /** The share of wrong pixels, the larger of that on white and on magenta; 0 to 1. */
  static double wrong(BufferedImage one, BufferedImage other) {
    if (one.getWidth() != other.getWidth() || one.getHeight() != other.getHeight()) {
      return 1;
    }
    double worst = 0;
    for (Color background : BACKGROUNDS) {
      int[] a = on(background, one);
      int[] b = on(background, other);
      worst = Math.max(worst, wrong(a, b, one.getWidth(), one.getHeight()));
    }
    return worst;
  }

  private static double wrong(int[] a, int[] b, int width, int height) {
    int wrong = 0;
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int at = y * width + x;
        if (a[at] != b[at] && (outside(a[at], b, x, y, width) || outside(b[at], a, x, y, width))) {
          wrong++;
        }
      }
    }
    return (double) wrong / a.length;
  }

  private static boolean outside(int pixel, int[] other, int x, int y, int width) {
    int height = other.length / width;
    for (int shift = 0; shift < 24; shift += 8) {
      int least = 255;
      int most = 0;
      for (int ny = Math.max(0, y - 1); ny <= Math.min(height - 1, y + 1); ny++) {
        for (int nx = Math.max(0, x - 1); nx <= Math.min(width - 1, x + 1); nx++) {
          int level = other[ny * width + nx] >> shift & 255;
          least = Math.min(least, level);
          most = Math.max(most, level);
        }
      }
      int level = pixel >> shift & 255;
      if (level < least - LEVELS || level > most + LEVELS) {
        return true;
      }
    }
    return false;
  }

  /** The pixels over a colour. Grey samples are taken as they stand: Java takes them for light. */
  private static int[] on(Color background, BufferedImage image) {
    int w = image.getWidth();
    int h = image.getHeight();
    boolean grey = image.getColorModel().getColorSpace().getType() == ColorSpace.TYPE_GRAY;
    int[] pixels = grey ? greys(image) : image.getRGB(0, 0, w, h, null, 0, w);
    for (int i = 0; i < pixels.length; i++) {
      int alpha = pixels[i] >>> 24;
      int flat = 0;
      for (int shift = 0; shift < 24; shift += 8) {
        int level =
            alpha * (pixels[i] >> shift & 255)
                + (255 - alpha) * (background.getRGB() >> shift & 255);
        flat |= (level + 127) / 255 << shift;
      }
      pixels[i] = flat;
    }
    return pixels;
  }

  private static int[] greys(BufferedImage image) {
    Raster raster = image.getRaster();
    int scale = (1 << image.getColorModel().getComponentSize(0)) - 1;
    boolean clear = raster.getNumBands() > 1;
    int[] pixels = new int[image.getWidth() * image.getHeight()];
    for (int i = 0; i < pixels.length; i++) {
      int x = i % image.getWidth();
      int y = i / image.getWidth();
      int level = raster.getSample(x, y, 0) * 255 / scale;
      int alpha = clear ? raster.getSample(x, y, 1) * 255 / scale : 255;
      pixels[i] = alpha << 24 | level * 0x010101;
    }
    return pixels;
  }
}
