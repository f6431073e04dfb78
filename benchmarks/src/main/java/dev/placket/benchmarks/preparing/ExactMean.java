package dev.placket.benchmarks.preparing;

import dev.placket.pictures.prepare.PixelGrid;

/** The mean over whole blocks of pixels, not rounded, by the plainest of loops. */
final class ExactMean {
  private ExactMean() {}

  /** Peak signal to noise ratio of a picture a whole number of times smaller, in decibels. */
  static double likeness(PixelGrid large, PixelGrid small) {
    int n = large.width() / small.width();
    double sum = 0;
    int rows = Math.min(small.height(), large.height() / n);
    for (int y = 0; y < rows; y++) {
      for (int x = 0; x < small.width(); x++) {
        sum += squares(block(large, x * n, y * n, n), small.at(x, y));
      }
    }
    return 10 * Math.log10(255 * 255 / (sum / (4.0 * rows * small.width())));
  }

  /** Alpha, then red, green and blue times alpha. */
  private static double[] block(PixelGrid large, int left, int top, int n) {
    double[] sums = new double[4];
    for (int y = top; y < top + n; y++) {
      for (int x = left; x < left + n; x++) {
        add(sums, large.at(x, y), 1.0 / (n * n));
      }
    }
    return sums;
  }

  private static void add(double[] sums, int p, double weight) {
    double alpha = p >>> 24;
    sums[0] += weight * alpha;
    for (int i = 0; i < 3; i++) {
      sums[i + 1] += weight * alpha * (p >> 16 - 8 * i & 255) / 255;
    }
  }

  private static double squares(double[] exact, int p) {
    double[] found = new double[4];
    add(found, p, 1);
    double sum = 0;
    for (int i = 0; i < 4; i++) {
      sum += (exact[i] - found[i]) * (exact[i] - found[i]);
    }
    return sum;
  }
}
