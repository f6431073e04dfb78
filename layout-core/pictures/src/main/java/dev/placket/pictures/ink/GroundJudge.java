package dev.placket.pictures.ink;

import dev.placket.pictures.base.Ground;
import java.util.function.IntFunction;

/** Tells the ground of a raster from its outermost pixels. */
final class GroundJudge {
  /** Paper, also off-white: no channel under this, and no more tint than that. */
  private static final int WHITE = 215;

  private static final int TINT = 36;

  /** Noise of a scan or of compression is let go up to this many levels, lines are darker. */
  private static final int MOST = 56;

  private GroundJudge() {}

  /**
   * The ground behind a ring, or, where a frame line fills the outer rings, behind that line.
   *
   * @param least the tolerance of a clean picture
   */
  static GroundLook judge(IntFunction<int[]> ring, int rings, int least) {
    GroundLook outer = look(ring.apply(0), least, 0.5);
    for (int d = 1; d < rings && outer.ground() == Ground.OPAQUE_OTHER; d++) {
      GroundLook inner = look(ring.apply(d), least, 0.9);
      if (inner.ground() != Ground.OPAQUE_OTHER) {
        return inner;
      }
    }
    return outer;
  }

  /**
   * The ground as one ring shows it.
   *
   * @param share how much of the ring has to be ground
   */
  static GroundLook look(int[] ring, int least, double share) {
    int clear = 0;
    int[][] levels = new int[3][256];
    for (int p : ring) {
      clear += p >>> 24 <= GroundLook.FAINT ? 1 : 0;
      levels[0][p >> 16 & 255]++;
      levels[1][p >> 8 & 255]++;
      levels[2][p & 255]++;
    }
    int red = quantile(levels[0], 0.5);
    int green = quantile(levels[1], 0.5);
    int blue = quantile(levels[2], 0.5);
    if (clear >= share * ring.length) {
      return new GroundLook(Ground.TRANSPARENT, 0, 0, 0, 0);
    }
    GroundLook look =
        new GroundLook(
            Ground.OPAQUE_WHITE, red, green, blue, tolerance(ring, red, green, blue, least));
    int alike = 0;
    for (int p : ring) {
      alike += look.alike(p) ? 1 : 0;
    }
    int darkest = Math.min(red, Math.min(green, blue));
    int tint = Math.max(red, Math.max(green, blue)) - darkest;
    boolean white = darkest >= WHITE && tint <= TINT && alike >= share * ring.length;
    return white ? look : new GroundLook(Ground.OPAQUE_OTHER, red, green, blue, least);
  }

  /** Wide enough for the noise of the ring itself. */
  private static int tolerance(int[] ring, int red, int green, int blue, int least) {
    int[] far = new int[MOST + 1];
    for (int p : ring) {
      int d =
          Math.max(
              Math.abs((p >> 16 & 255) - red),
              Math.max(Math.abs((p >> 8 & 255) - green), Math.abs((p & 255) - blue)));
      if (d <= MOST) {
        far[d]++;
      }
    }
    return Math.max(least, Math.min(MOST, 3 * quantile(far, 0.99) / 2 + 4));
  }

  private static int quantile(int[] counts, double share) {
    long all = 0;
    for (int c : counts) {
      all += c;
    }
    long sum = 0;
    for (int i = 0; i < counts.length; i++) {
      sum += counts[i];
      if (sum > share * all) {
        return i;
      }
    }
    return 0;
  }
}
