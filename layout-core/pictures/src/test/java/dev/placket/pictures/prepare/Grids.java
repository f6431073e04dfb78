package dev.placket.pictures.prepare;

import java.awt.image.BufferedImage;
import java.util.Random;
import java.util.function.IntBinaryOperator;

/** Pictures made pixel by pixel. */
final class Grids {
  private Grids() {}

  static PixelGrid of(int width, int height, IntBinaryOperator argbAt) {
    int[] argb = new int[width * height];
    for (int i = 0; i < argb.length; i++) {
      argb[i] = argbAt.applyAsInt(i % width, i / width);
    }
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    image.setRGB(0, 0, width, height, argb, 0, width);
    return PixelGrid.of(image);
  }

  /** Any colours with any alpha, the same for the same seed. */
  static PixelGrid any(int width, int height, long seed) {
    Random random = new Random(seed);
    return of(width, height, (x, y) -> random.nextInt());
  }

  static int grey(int level) {
    return 0xFF000000 | level * 0x010101;
  }

  /** One channel of a pixel over a ground: exact, not rounded. */
  static double over(int argb, int shift, int ground) {
    double alpha = (argb >>> 24) / 255.0;
    return alpha * (argb >> shift & 255) + (1 - alpha) * ground;
  }
}
