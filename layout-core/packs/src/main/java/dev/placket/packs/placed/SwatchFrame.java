package dev.placket.packs.placed;

import dev.placket.layout.sheet.Rule;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import dev.placket.packs.flats.FlatSet;
import dev.placket.pictures.Drawing;
import java.awt.image.BufferedImage;
import java.util.List;

/** A hairline round cloth or a photograph so pale that its edge would not show on paper. */
public final class SwatchFrame {
  /** The width of the hairline. */
  public static final Length LINE = Length.pt(0.35);

  /** Pixels across of a drawing that is looked at: its edges are seen, its threads are not. */
  private static final int LOOKED_AT = 96;

  /** What is lighter than this in all channels hardly stands out from paper. */
  private static final int PALE = 215;

  private SwatchFrame() {}

  /** Whether it has one: it keeps its ground, and most of some side of that is pale. */
  public static boolean isNeeded(PlacedFlat flat) {
    return FlatSet.keepsGround(flat.flat().role()) && vanishes(pixels(flat, LOOKED_AT));
  }

  /** The picture; a drawing with that many pixels along its longest side. */
  static BufferedImage pixels(PlacedFlat flat, int longest) {
    RasterPrint raster = flat.raster();
    return raster == null
        ? ((Drawing) flat.item().file().picture()).render(longest, flat.flat().ink())
        : raster.image();
  }

  /** The four lines, just inside its edge; none for another flat, or where the edge shows. */
  public static List<Rule> of(PlacedFlat flat, Rect ink) {
    if (!isNeeded(flat)) {
      return List.of();
    }
    return lines(ink.grown(-LINE.pt() / 2));
  }

  /** Lines along the sides of a rectangle. */
  static List<Rule> lines(Rect box) {
    double left = box.left();
    double top = box.top();
    double right = box.right();
    double bottom = box.bottom();
    return List.of(
        new Rule(new Rect(left, top, right, top), LINE),
        new Rule(new Rect(left, bottom, right, bottom), LINE),
        new Rule(new Rect(left, top, left, bottom), LINE),
        new Rule(new Rect(right, top, right, bottom), LINE));
  }

  /** Whether most of some side is pale. */
  private static boolean vanishes(BufferedImage image) {
    int w = image.getWidth();
    int h = image.getHeight();
    return pale(image, 0, 0, w, 1)
        || pale(image, 0, h - 1, w, 1)
        || pale(image, 0, 0, 1, h)
        || pale(image, w - 1, 0, 1, h);
  }

  private static boolean pale(BufferedImage image, int x, int y, int width, int height) {
    int[] side = image.getRGB(x, y, width, height, null, 0, width);
    int pale = 0;
    for (int p : side) {
      int alpha = p >>> 24;
      int darkest = Math.min(p >> 16 & 255, Math.min(p >> 8 & 255, p & 255));
      pale += 255 - alpha * (255 - darkest) / 255 >= PALE ? 1 : 0;
    }
    return 2 * pale > side.length;
  }
}
