package dev.placket.pictures.raster;

import org.jspecify.annotations.Nullable;

/**
 * How far the colours that a PNG states by its parts gAMA and cHRM are from sRGB (PNG, third
 * edition, 11.3.2.1 and 11.3.2.2). They are not applied; a note names them if that is visible.
 */
final class StatedColours {
  /** Levels of 255 up to which the difference is not worth a word. */
  static final int SEEN = 8;

  /** sRGB's chromaticities as cHRM states them: white, red, green, blue, x and y of each. */
  private static final long[] SRGB = {31270, 32900, 64000, 33000, 30000, 60000, 15000, 6000};

  private static final double UNIT = 100_000;
  private static final int STEP = 51;

  private StatedColours() {}

  /**
   * The levels by which a colour of a cube is off at most.
   *
   * @param gamma as gAMA states it, or 0
   * @param points as cHRM states them, or null
   */
  static int off(long gamma, long @Nullable [] points, boolean grey) {
    double[][] matrix = points == null || grey ? null : matrix(points);
    double most = 0;
    for (int r = 0; r < 256; r += STEP) {
      for (int g = 0; g < 256; g += STEP) {
        for (int b = 0; b < 256; b += STEP) {
          double[] light = {light(r, gamma), light(g, gamma), light(b, gamma)};
          double[] seen = matrix == null ? light : times(matrix, light);
          most = Math.max(most, Math.abs(encoded(seen[0]) - r));
          most = Math.max(most, Math.abs(encoded(seen[1]) - g));
          most = Math.max(most, Math.abs(encoded(seen[2]) - b));
        }
      }
    }
    return (int) Math.round(most);
  }

  /** From a value to light; without a gamma by sRGB's curve (IEC 61966-2-1). */
  private static double light(int value, long gamma) {
    double v = value / 255.0;
    if (gamma > 0) {
      return Math.pow(v, UNIT / gamma);
    }
    return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
  }

  private static double encoded(double light) {
    double l = Math.max(0, Math.min(1, light));
    return 255 * (l <= 0.0031308 ? 12.92 * l : 1.055 * Math.pow(l, 1 / 2.4) - 0.055);
  }

  /** Between the two sets of primaries; null where the stated ones span no colours. */
  private static double @Nullable [][] matrix(long[] points) {
    double[][] from = toXyz(points);
    double[][] back = inverse(toXyz(SRGB));
    if (from == null || back == null) {
      return null;
    }
    double[][] out = new double[3][3];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        for (int k = 0; k < 3; k++) {
          out[i][j] += back[i][k] * from[k][j];
        }
      }
    }
    return out;
  }

  private static double @Nullable [][] toXyz(long[] p) {
    double[][] columns = new double[3][3];
    for (int c = 0; c < 3; c++) {
      double x = p[2 + 2 * c] / UNIT;
      double y = p[3 + 2 * c] / UNIT;
      columns[0][c] = x;
      columns[1][c] = y;
      columns[2][c] = 1 - x - y;
    }
    double[][] inverse = inverse(columns);
    if (inverse == null || p[1] == 0) {
      return null;
    }
    double y = p[1] / UNIT;
    double x = p[0] / UNIT;
    double[] share = times(inverse, new double[] {x / y, 1, (1 - x - y) / y});
    for (double[] row : columns) {
      for (int c = 0; c < 3; c++) {
        row[c] *= share[c];
      }
    }
    return columns;
  }

  private static double[] times(double[][] m, double[] v) {
    double[] out = new double[3];
    for (int i = 0; i < 3; i++) {
      out[i] = m[i][0] * v[0] + m[i][1] * v[1] + m[i][2] * v[2];
    }
    return out;
  }

  private static double @Nullable [][] inverse(double @Nullable [][] m) {
    if (m == null) {
      return null;
    }
    double[][] out = new double[3][3];
    double whole = 0;
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        int a = (j + 1) % 3;
        int b = (j + 2) % 3;
        int c = (i + 1) % 3;
        int d = (i + 2) % 3;
        out[i][j] = m[a][c] * m[b][d] - m[a][d] * m[b][c];
      }
      whole += m[0][i] * out[i][0];
    }
    if (Math.abs(whole) < 1e-9) {
      return null;
    }
    for (double[] row : out) {
      for (int j = 0; j < 3; j++) {
        row[j] /= whole;
      }
    }
    return out;
  }
}
