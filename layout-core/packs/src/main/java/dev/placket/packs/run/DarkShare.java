package dev.placket.packs.run;

import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import dev.placket.packs.placed.PlacedFlat;
import dev.placket.pictures.Drawing;
import java.awt.image.BufferedImage;
import java.util.function.ToDoubleFunction;

/**
 * What share of a box on the sheet a placed drawing covers with ink, seen at a fixed resolution.
 *
 * @param seen the drawing
 * @param ink where it lies
 * @param perPoint pixels to the point
 */
record DarkShare(BufferedImage seen, Rect ink, double perPoint) implements ToDoubleFunction<Rect> {
  private static final double PER_MM = 6;
  private static final int WHITE = 255;

  /** Of a flat; pictures of pixels count as clear. */
  static ToDoubleFunction<Rect> of(PlacedFlat flat) {
    if (!(flat.item().file().picture() instanceof Drawing drawing)) {
      return box -> 0;
    }
    Rect ink = flat.ink().toBox();
    double perPoint = PER_MM / Length.mm(1).pt();
    int width = (int) Math.ceil(ink.width() * perPoint);
    int height = (int) Math.ceil(ink.height() * perPoint);
    return new DarkShare(drawing.render(width, height, flat.flat().ink()), ink, perPoint);
  }

  @Override
  public double applyAsDouble(Rect box) {
    double dark = 0;
    int count = 0;
    for (int y = at(box.top() - ink.top()); y <= at(box.bottom() - ink.top()); y++) {
      for (int x = at(box.left() - ink.left()); x <= at(box.right() - ink.left()); x++) {
        count++;
        if (x >= 0 && y >= 0 && x < seen.getWidth() && y < seen.getHeight()) {
          dark += darkness(seen.getRGB(x, y));
        }
      }
    }
    return count == 0 ? 0 : dark / count;
  }

  private int at(double points) {
    return (int) Math.floor(points * perPoint);
  }

  private static double darkness(int argb) {
    int opacity = argb >>> 24;
    int sum = (argb >> 16 & WHITE) + (argb >> 8 & WHITE) + (argb & WHITE);
    return opacity / (double) WHITE * (1 - sum / (3.0 * WHITE));
  }
}
