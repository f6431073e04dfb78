package dev.placket.packs.dimensions;

import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.units.Rect;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.Picture;
import java.awt.image.BufferedImage;
import java.util.function.ToDoubleFunction;

/**
 * Where the ink of a drawing lies, seen at a fixed resolution, as sums over its pixels.
 *
 * <p>Takes a box in drawing units and returns what share of it is covered, from 0 to 1.
 */
public final class InkMap implements ToDoubleFunction<Rect> {
  /** Pixels along the longest side: the sums fit into whole numbers, and a stitch is seen. */
  private static final int LONGEST = 1200;

  private static final int FULL = 255;

  private final InkedBox ink;
  private final double perUnit;
  private final int width;
  private final int height;

  /** The darkness of all pixels above and left of each corner. */
  private final int[] sums;

  private InkMap(InkedBox ink, double perUnit, BufferedImage seen) {
    this.ink = ink;
    this.perUnit = perUnit;
    this.width = seen.getWidth();
    this.height = seen.getHeight();
    this.sums = new int[(width + 1) * (height + 1)];
    for (int y = 0; y < height; y++) {
      int row = 0;
      for (int x = 0; x < width; x++) {
        row += darkness(seen.getRGB(x, y));
        sums[(y + 1) * (width + 1) + x + 1] = sums[y * (width + 1) + x + 1] + row;
      }
    }
  }

  /** That of a picture; pictures of pixels count as clear. */
  public static ToDoubleFunction<Rect> of(Picture picture, InkedBox ink) {
    if (!(picture instanceof Drawing drawing)) {
      return box -> 0;
    }
    double perUnit = LONGEST / ink.longestSide();
    int width = Math.max(1, (int) Math.ceil(ink.width() * perUnit));
    int height = Math.max(1, (int) Math.ceil(ink.height() * perUnit));
    return new InkMap(ink, perUnit, drawing.render(width, height, ink));
  }

  @Override
  public double applyAsDouble(Rect box) {
    int left = at(box.left() - ink.left());
    int top = at(box.top() - ink.top());
    int right = at(box.right() - ink.left()) + 1;
    int bottom = at(box.bottom() - ink.top()) + 1;
    double all = (double) (right - left) * (bottom - top) * FULL;
    return sum(left, top, right, bottom) / all;
  }

  private double sum(int left, int top, int right, int bottom) {
    int x = Math.max(0, Math.min(width, left));
    int y = Math.max(0, Math.min(height, top));
    int toX = Math.max(0, Math.min(width, right));
    int toY = Math.max(0, Math.min(height, bottom));
    int line = width + 1;
    return sums[toY * line + toX]
        - sums[y * line + toX]
        - sums[toY * line + x]
        + sums[y * line + x];
  }

  private int at(double units) {
    return (int) Math.floor(units * perUnit);
  }

  private static int darkness(int argb) {
    int opacity = argb >>> 24;
    int sum = (argb >> 16 & FULL) + (argb >> 8 & FULL) + (argb & FULL);
    return opacity * (3 * FULL - sum) / (3 * FULL);
  }
}
