package dev.placket.layout.solve.look;

import dev.placket.layout.units.Rect;
import java.util.Arrays;
import java.util.List;

/**
 * Measures of {@link Look} that compare the quarters of a frame. A box that reaches into several
 * quarters counts with its part in each; for counting it belongs to the quarter of its middle.
 */
final class LookQuarters {
  /** Sums over the parts in each quarter: upper left, upper right, lower left, lower right. */
  private final double[] x = new double[4];

  private final double[] y = new double[4];
  private final double[] width = new double[4];
  private final double[] height = new double[4];
  private final double[] slope = new double[4];
  private final double[] distance = new double[4];
  private final double[] area = new double[4];
  private final double[] momentX = new double[4];
  private final double[] momentY = new double[4];
  private final int[] count = new int[4];

  LookQuarters(Rect frame, List<Rect> boxes) {
    double middleX = (frame.left() + frame.right()) / 2;
    double middleY = (frame.top() + frame.bottom()) / 2;
    for (Rect b : boxes) {
      for (int q = 0; q < 4; q++) {
        boolean left = q % 2 == 0;
        boolean upper = q < 2;
        double from = left ? b.left() : Math.max(b.left(), middleX);
        double to = left ? Math.min(b.right(), middleX) : b.right();
        double top = upper ? b.top() : Math.max(b.top(), middleY);
        double bottom = upper ? Math.min(b.bottom(), middleY) : b.bottom();
        if (to > from && bottom > top) {
          double dx = Math.abs((from + to) / 2 - middleX);
          double dy = Math.abs((top + bottom) / 2 - middleY);
          add(q, dx, dy, to - from, bottom - top);
        }
      }
      int of = ((b.left() + b.right()) / 2 > middleX ? 1 : 0);
      count[of + ((b.top() + b.bottom()) / 2 > middleY ? 2 : 0)]++;
    }
  }

  private void add(int q, double dx, double dy, double w, double h) {
    x[q] += dx;
    y[q] += dy;
    width[q] += w;
    height[q] += h;
    slope[q] += dy / dx;
    distance[q] += Math.hypot(dx, dy);
    area[q] += w * h;
    momentX[q] += w * h * dx;
    momentY[q] += w * h * dy;
  }

  double balance() {
    double across = uneven(momentX[0] + momentX[2], momentX[1] + momentX[3]);
    double down = uneven(momentY[0] + momentY[1], momentY[2] + momentY[3]);
    return 1 - (across + down) / 2;
  }

  private static double uneven(double a, double b) {
    return Math.max(a, b) == 0 ? 0 : Math.abs(a - b) / Math.max(a, b);
  }

  double symmetry() {
    double[][] all = {x, y, width, height, slope, distance};
    double upright = 0;
    double level = 0;
    double round = 0;
    for (double[] sums : all) {
      double[] s = normal(sums);
      upright += Math.abs(s[0] - s[1]) + Math.abs(s[2] - s[3]);
      level += Math.abs(s[0] - s[2]) + Math.abs(s[1] - s[3]);
      round += Math.abs(s[0] - s[3]) + Math.abs(s[1] - s[2]);
    }
    return 1 - (upright + level + round) / 36;
  }

  double sequence() {
    int[] wanted = {4, 3, 2, 1};
    double[] weight = new double[4];
    for (int q = 0; q < 4; q++) {
      weight[q] = wanted[q] * area[q];
    }
    int off = 0;
    for (int q = 0; q < 4; q++) {
      int rank = 4;
      for (int other = 0; other < 4; other++) {
        boolean before = weight[other] > weight[q] || (weight[other] == weight[q] && other < q);
        rank -= before ? 1 : 0;
      }
      off += Math.abs(wanted[q] - rank);
    }
    return 1 - off / 8.0;
  }

  double rhythm() {
    return 1 - (pairs(normal(x)) + pairs(normal(y)) + pairs(normal(area))) / 3;
  }

  private static double pairs(double[] s) {
    double sum = 0;
    for (int a = 0; a < 4; a++) {
      for (int b = 0; b < a; b++) {
        sum += Math.abs(s[a] - s[b]);
      }
    }
    return sum / 6;
  }

  /** How many ways there are to share the objects so, against the most ways. */
  double homogeneity() {
    int n = Arrays.stream(count).sum();
    double ways = 0;
    double most = 0;
    for (int q = 0; q < 4; q++) {
      ways -= logFactorial(count[q]);
      most -= logFactorial(n / 4 + (q < n % 4 ? 1 : 0));
    }
    return Math.exp(ways - most);
  }

  private static double logFactorial(int k) {
    double sum = 0;
    for (int i = 2; i <= k; i++) {
      sum += Math.log(i);
    }
    return sum;
  }

  /** The same over the largest of the four. */
  private static double[] normal(double[] sums) {
    double most = Arrays.stream(sums).max().orElse(0);
    return Arrays.stream(sums).map(s -> most > 0 ? s / most : 0).toArray();
  }
}
