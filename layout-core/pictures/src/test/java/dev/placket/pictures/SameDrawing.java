package dev.placket.pictures;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.base.ViewBox;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;

/** Compares two drawings of the same by their pixels. */
final class SameDrawing {
  private static final int WIDTH = 200;

  /** Levels by which edges may differ that are rounded in another order. */
  private static final int LEVELS = 12;

  private SameDrawing() {}

  static String svg(String root, String inside) {
    return "<svg xmlns='http://www.w3.org/2000/svg' " + root + ">" + inside + "</svg>";
  }

  static Drawing read(String svg) throws PictureException {
    return (Drawing)
        PictureReader.read(
            PictureSource.of("try.svg", svg.getBytes(StandardCharsets.UTF_8)), ReadLimits.DEFAULT);
  }

  /** Premultiplied channels may differ by some levels; nothing may be blank. */
  static void assertSame(String form, String plain) throws PictureException {
    BufferedImage a = rendered(form);
    BufferedImage b = rendered(plain);
    int worst = 0;
    for (int y = 0; y < b.getHeight(); y++) {
      for (int x = 0; x < WIDTH; x++) {
        worst = Math.max(worst, difference(a.getRGB(x, y), b.getRGB(x, y)));
      }
    }
    int found = worst;
    assertTrue(worst <= LEVELS, () -> "differs by " + found + " levels: " + form);
  }

  private static BufferedImage rendered(String svg) throws PictureException {
    Drawing d = read(svg);
    ViewBox v = d.viewBox();
    return d.render(WIDTH, new InkedBox(v.x(), v.y(), v.x() + v.width(), v.y() + v.height()));
  }

  static int difference(int a, int b) {
    int worst = Math.abs((a >>> 24) - (b >>> 24));
    for (int shift = 0; shift < 24; shift += 8) {
      int one = (a >> shift & 255) * (a >>> 24) / 255;
      int other = (b >> shift & 255) * (b >>> 24) / 255;
      worst = Math.max(worst, Math.abs(one - other));
    }
    return worst;
  }
}
