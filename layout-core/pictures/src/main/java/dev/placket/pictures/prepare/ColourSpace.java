package dev.placket.pictures.prepare;

/**
 * Colours as they look with their alpha multiplied in and as they look on white: the squared
 * distance of two is the mean of their squared differences over both, in levels of 255.
 */
final class ColourSpace {
  /** Alpha, three colours times alpha, the same three on white. */
  static final int AXES = 7;

  /** The mean over four channels and over three, and each of both once. */
  private static final double FOURTH = Math.sqrt(1 / 4.0);

  private static final double THIRD = Math.sqrt(1 / 3.0);

  private ColourSpace() {}

  /** Where a colour stands, written into {@code into} from {@code at} on. */
  static void place(int argb, double[] into, int at) {
    double alpha = argb >>> 24;
    into[at] = FOURTH * alpha;
    for (int i = 0; i < 3; i++) {
      double colour = alpha * (argb >> 16 - 8 * i & 255) / 255;
      into[at + 1 + i] = FOURTH * colour;
      into[at + 4 + i] = THIRD * (colour - alpha);
    }
  }

  /** The 8-bit colour nearest to a place that is a mean of colours. */
  static int colour(double[] place) {
    double alpha = place[0] / FOURTH;
    int a = (int) Math.round(alpha);
    int argb = a << 24;
    for (int i = 0; i < 3 && a > 0; i++) {
      double c = place[1 + i] / FOURTH * 255 / alpha;
      argb |= (int) Math.min(255, Math.round(c)) << 16 - 8 * i;
    }
    return argb;
  }

  /** The squared difference with alpha multiplied in, a mean over four channels. */
  static double multiplied(double[] one, int i, double[] two, int j) {
    return squares(one, i, two, j, 4);
  }

  /** The squared difference on white, a mean over three channels. */
  static double onWhite(double[] one, int i, double[] two, int j) {
    return squares(one, i + 4, two, j + 4, 3);
  }

  private static double squares(double[] one, int i, double[] two, int j, int axes) {
    double sum = 0;
    for (int k = 0; k < axes; k++) {
      double d = one[i + k] - two[j + k];
      sum += d * d;
    }
    return sum;
  }
}
