package dev.placket.pictures.svg;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Fragments drawn by the library, each once: 40 units a side, two pixels to the unit. */
final class Shots {
  static final int SIDE = 40;
  static final int ZOOM = 2;

  /** So that no drawing is blank, which would be refused. */
  private static final String MARK = "<path d='M38 38H40V40H38Z'/>";

  private final Map<String, Shot> taken = new HashMap<>();

  /**
   * A rendering.
   *
   * @param pixels ARGB, row by row
   * @param notes what its reader noted that changes the picture
   */
  record Shot(int[] pixels, List<String> notes) {
    /** The colour at a point, over white. */
    int over(double x, double y) {
      int argb = pixels[(int) (y * ZOOM) * SIDE * ZOOM + (int) (x * ZOOM)];
      int alpha = argb >>> 24;
      int rgb = 0;
      for (int shift = 16; shift >= 0; shift -= 8) {
        rgb |= (int) Math.round(255 + ((argb >> shift & 255) - 255) * alpha / 255.0) << shift;
      }
      return rgb;
    }
  }

  /** A whole document around a fragment. */
  static String document(String fragment) {
    return fragment.startsWith("<svg xmlns=")
        ? fragment
        : "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink'"
            + " viewBox='0 0 40 40'>"
            + MARK
            + fragment
            + "</svg>";
  }

  Shot of(String fragment) {
    return taken.computeIfAbsent(fragment, Shots::take);
  }

  private static Shot take(String fragment) {
    try {
      Drawing d = read(fragment);
      int side = SIDE * ZOOM;
      int[] pixels =
          d.render(side, side, InkedBox.ofSize(SIDE, SIDE)).getRGB(0, 0, side, side, null, 0, side);
      return new Shot(
          pixels,
          d.notes().stream().filter(PictureNote::changesPicture).map(PictureNote::text).toList());
    } catch (PictureException e) {
      throw new AssertionError(e.getMessage() + ": " + document(fragment), e);
    }
  }

  static Drawing read(String fragment) throws PictureException {
    byte[] svg = document(fragment).getBytes(StandardCharsets.UTF_8);
    return (Drawing) PictureReader.read(PictureSource.of("case.svg", svg), ReadLimits.DEFAULT);
  }
}
