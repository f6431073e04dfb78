package dev.placket.layout.image.prepare;

import dev.placket.layout.image.PictureException;
import java.util.Arrays;

/**
 * The colour of an opaque ground and how far its own pixels stray from it, as the border of the
 * picture shows them.
 *
 * @param alpha 0 to 255
 * @param red likewise
 * @param green likewise
 * @param blue likewise
 * @param spread a pixel that is darker by no more than this in any channel is ground; 0 for a
 *     ground of one exact colour
 */
record GroundColour(int alpha, int red, int green, int blue, int spread) {
  /** Compression leaves noise of this size beside the lines of a JPEG. */
  private static final int LOSSY = 24;

  private static final int OPAQUE = 247;
  private static final int WHITE = 230;
  private static final int TINT = 20;
  private static final int MOST = 40;
  private static final double CALM = 0.95;

  /** Measures the border. Reads all rows once. */
  static GroundColour of(PixelRows rows, boolean lossy) throws PictureException {
    int[] border = border(rows);
    int a = median(border, 24);
    int r = median(border, 16);
    int g = median(border, 8);
    int b = median(border, 0);
    GroundColour exact = new GroundColour(a, r, g, b, 0);
    int[] strays =
        Arrays.stream(border).map(exact::depth).filter(d -> d <= MOST).sorted().toArray();
    int calm = strays.length == 0 ? 0 : strays[(int) (CALM * (strays.length - 1))];
    return new GroundColour(a, r, g, b, Math.min(MOST, Math.max(2 * calm, lossy ? LOSSY : 0)));
  }

  /** Whether it is opaque and white, or so near white that nobody sees the difference. */
  boolean white() {
    int least = Math.min(red, Math.min(green, blue));
    int most = Math.max(red, Math.max(green, blue));
    return alpha > OPAQUE && least >= WHITE && most - least <= TINT;
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

  /** How much darker than the ground an opaque pixel is in its darkest channel; at least 0. */
  int depth(int argb) {
    int d = Math.max(red - (argb >> 16 & 255), green - (argb >> 8 & 255));
    return Math.max(0, Math.max(d, blue - (argb & 255)));
  }
}
