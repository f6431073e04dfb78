package dev.placket.layout.image;

import dev.placket.layout.flat.InkedBox;

/**
 * Scales down by the mean of the area that each new pixel covers, colours weighted by alpha, so
 * that nothing shifts and no hidden colour bleeds in. O(pixels of the part).
 */
final class AreaAverage {
  private static final int CHANNELS = 4;

  private AreaAverage() {}

  static Pixels of(Pixels source, InkedBox part, int width, int height) {
    int left = (int) part.left();
    int top = (int) part.top();
    int w = (int) part.width();
    int h = (int) part.height();
    int[] out = new int[width * height];
    double[] sums = new double[width * CHANNELS];
    double[] row = new double[width * CHANNELS];
    double step = (double) h / height;
    int have = -1;
    for (int y = 0; y < height; y++) {
      java.util.Arrays.fill(sums, 0);
      double from = y * step;
      double to = Math.min(h, (y + 1) * step);
      for (int v = (int) from; v < to; v++) {
        if (v != have) {
          across(source, left, top + v, w, row);
          have = v;
        }
        double weight = Math.min(to, v + 1) - Math.max(from, v);
        for (int i = 0; i < sums.length; i++) {
          sums[i] += weight * row[i];
        }
      }
      for (int x = 0; x < width; x++) {
        out[y * width + x] = pixel(sums, x * CHANNELS, step * w / width);
      }
    }
    return new Pixels(width, height, out);
  }

  private static void across(Pixels source, int left, int y, int w, double[] row) {
    java.util.Arrays.fill(row, 0);
    int width = row.length / CHANNELS;
    double step = (double) w / width;
    int at = y * source.width() + left;
    for (int x = 0; x < width; x++) {
      double from = x * step;
      double to = Math.min(w, (x + 1) * step);
      for (int u = (int) from; u < to; u++) {
        double weight = Math.min(to, u + 1) - Math.max(from, u);
        int p = source.argb()[at + u];
        double alpha = weight * (p >>> 24);
        int i = x * CHANNELS;
        row[i] += alpha;
        row[i + 1] += alpha * (p >> 16 & 255);
        row[i + 2] += alpha * (p >> 8 & 255);
        row[i + 3] += alpha * (p & 255);
      }
    }
  }

  private static int pixel(double[] sums, int i, double area) {
    double alpha = sums[i];
    int a = (int) Math.round(alpha / area);
    if (a <= 0) {
      return 0;
    }
    return Math.min(255, a) << 24
        | level(sums[i + 1] / alpha) << 16
        | level(sums[i + 2] / alpha) << 8
        | level(sums[i + 3] / alpha);
  }

  private static int level(double value) {
    return (int) Math.max(0, Math.min(255, Math.round(value)));
  }
}
