package dev.placket.packs.placed;

import java.awt.image.BufferedImage;

/**
 * Lines that end at the edge of a drawing, as those of a part cut out of a larger one do.
 *
 * <p>A line that is cut runs into the edge as one stroke of even width. An outline that only
 * touches the edge runs along it, or leaves it as two strokes.
 */
final class CutEnds {
  /** Pixels along the longest side of a drawing that is looked at: its finest lines are seen. */
  private static final int LOOKED_AT = 480;

  /** How far from the edge a line is looked at, in pixels. */
  private static final int DEPTH = 12;

  /** The widest line, in pixels: a fortieth of the drawing. */
  private static final int WIDEST = 12;

  /** Cut lines on one side that make a drawing a crop: a hanging thread or tape has one. */
  private static final int ENOUGH = 2;

  private static final int DARK = 128;

  private final BufferedImage image;

  private CutEnds(BufferedImage image) {
    this.image = image;
  }

  /** Whether at least two lines of the drawing are cut off at one of its sides. */
  static boolean areIn(PlacedFlat flat) {
    CutEnds ends = new CutEnds(SwatchFrame.pixels(flat, LOOKED_AT));
    for (Side side : Side.values()) {
      if (ends.at(side) >= ENOUGH) {
        return true;
      }
    }
    return false;
  }

  /** A side of the picture. */
  private enum Side {
    LEFT,
    TOP,
    RIGHT,
    BOTTOM
  }

  private int at(Side side) {
    int length = length(side);
    int ends = 0;
    int from = -1;
    for (int i = 0; i <= length; i++) {
      boolean dark = i < length && (isDark(side, i, 1) || isDark(side, i, 2));
      if (dark && from < 0) {
        from = i;
      } else if (!dark && from >= 0) {
        ends += isCut(side, from, i) ? 1 : 0;
        from = -1;
      }
    }
    return ends;
  }

  /** Whether the dark pixels at the edge belong to one stroke that runs into the drawing. */
  private boolean isCut(Side side, int from, int to) {
    int width = to - from;
    if (width > WIDEST) {
      return false;
    }
    int runs = 0;
    int dark = 0;
    boolean before = false;
    for (int i = Math.max(0, from - DEPTH); i < Math.min(length(side), to + DEPTH); i++) {
      boolean here = isDark(side, i, DEPTH);
      runs += here && !before ? 1 : 0;
      dark += here ? 1 : 0;
      before = here;
    }
    return runs == 1 && dark <= 2 * width;
  }

  private int length(Side side) {
    return side == Side.LEFT || side == Side.RIGHT ? image.getHeight() : image.getWidth();
  }

  /** A pixel at some distance along a side and from it. */
  private boolean isDark(Side side, int along, int in) {
    int x =
        switch (side) {
          case LEFT -> in;
          case RIGHT -> image.getWidth() - 1 - in;
          default -> along;
        };
    int y =
        switch (side) {
          case TOP -> in;
          case BOTTOM -> image.getHeight() - 1 - in;
          default -> along;
        };
    if (x < 0 || y < 0 || x >= image.getWidth() || y >= image.getHeight()) {
      return false;
    }
    int p = image.getRGB(x, y);
    int green = p >> 8 & 255;
    return (p >>> 24) * (255 - green) / 255 >= DARK;
  }
}
