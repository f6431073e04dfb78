package dev.placket.pictures.prepare;

import dev.placket.pictures.base.PictureException;
import java.util.Arrays;

/**
 * The colour of an opaque ground and how far its own pixels stray from it, as the border of the
 * picture shows them.
 *
 * @param alpha 0 to 255
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 * @param spread a pixel that is off by no more than this in any channel is ground; 0 for a ground
 *     of one exact colour
 * @param even the share of the border that is ground
 * @param white whether it is opaque and white, or so near white that nobody sees the difference
 */
record GroundColour(
    int alpha, int red, int green, int blue, int spread, double even, boolean white) {
  /** Compression leaves noise of this size beside the lines of a JPEG. */
  private static final int LOSSY = 24;

  private static final int OPAQUE = 247;

  /** What a probe calls white. */
  private static final int WHITE = 215;

  private static final int TINT = 36;
  private static final int MOST = 40;
  private static final double CALM = 0.95;

  /** A ground may be cut by a drawing that runs off the picture. */
  private static final double EVEN = 0.8;

  /** Measures the border. Reads all rows once. */
  static GroundColour of(PixelRows rows, boolean lossy) throws PictureException {
    int[] border = border(rows);
    int a = median(border, 24);
    int r = median(border, 16);
    int g = median(border, 8);
    int b = median(border, 0);
    GroundColour exact = new GroundColour(a, r, g, b, 0, 1, white(a, r, g, b));
    int[] strays =
        Arrays.stream(border).map(exact::depth).filter(d -> d <= MOST).sorted().toArray();
    int calm = strays.length == 0 ? 0 : strays[(int) (CALM * (strays.length - 1))];
    int spread = Math.min(MOST, Math.max(2 * calm, lossy ? LOSSY : 0));
    double even = Arrays.stream(strays).filter(d -> d <= spread).count() / (double) border.length;
    return new GroundColour(a, r, g, b, spread, even, exact.white);
  }

  private static boolean white(int alpha, int red, int green, int blue) {
    int least = Math.min(red, Math.min(green, blue));
    int most = Math.max(red, Math.max(green, blue));
    return alpha > OPAQUE && least >= WHITE && most - least <= TINT;
  }

  /** Whether it is to be cleared. */
  boolean clears(Clearing clearing) {
    return switch (clearing) {
      case NONE -> false;
      case FROM_BORDER, ENCLOSED_TOO -> white;
      case ANY_COLOUR -> white || alpha > OPAQUE && even >= EVEN;
    };
  }

  private static int[] border(PixelRows rows) throws PictureException {
    int w = rows.width();
    int h = rows.height();
    int[] border = new int[2 * w + 2 * h];
    int[] row = new int[w];
    try (PixelRows.Cursor in = rows.open()) {
      for (int y = 0; y < h; y++) {
        in.next(row);
        border[2 * w + 2 * y] = row[0];
        border[2 * w + 2 * y + 1] = row[w - 1];
        if (y == 0) {
          System.arraycopy(row, 0, border, 0, w);
        }
      }
    }
    System.arraycopy(row, 0, border, w, w);
    return border;
  }

  private static int median(int[] border, int shift) {
    int[] values = Arrays.stream(border).map(p -> p >> shift & 255).sorted().toArray();
    return values[values.length / 2];
  }

  /** A pixel as it looks on this ground. */
  int opaque(int argb) {
    int a = argb >>> 24;
    if (a == 255) {
      return argb;
    }
    return 255 << 24
        | mixed(argb >> 16 & 255, red, a) << 16
        | mixed(argb >> 8 & 255, green, a) << 8
        | mixed(argb & 255, blue, a);
  }

  private static int mixed(int c, int ground, int a) {
    return (c * a + ground * (255 - a) + 127) / 255;
  }

  /**
   * How far an opaque pixel is from the ground in the channel that is furthest; at least 0. Nothing
   * is lighter than white paper but its own noise.
   */
  int depth(int argb) {
    int r = off(red, argb >> 16 & 255);
    return Math.max(r, Math.max(off(green, argb >> 8 & 255), off(blue, argb & 255)));
  }

  private int off(int ground, int c) {
    return c > ground && white ? 0 : Math.abs(ground - c);
  }

  /**
   * The least alpha with which any ink at all gives a channel of a pixel on this ground, 0 to 1.
   */
  double leastAlpha(int ground, int c) {
    if (c <= ground) {
      return (ground - c) / (double) Math.max(1, ground);
    }
    return white ? 0 : (c - ground) / (double) (255 - ground);
  }
}
