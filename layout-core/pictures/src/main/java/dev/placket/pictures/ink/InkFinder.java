package dev.placket.pictures.ink;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.base.Ground;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.RowReader;
import org.jspecify.annotations.Nullable;

/**
 * The ground and the ink of a raster, from its rows: one pass where the first rows tell the ground
 * right, a second where they do not, more only where a frame line seems to stand round the ink, or
 * where there is none.
 *
 * @param look what counts as ground
 * @param box where the ink is, a frame line included, or null if there is none
 * @param insideFrame where the ink inside a frame line is, or null if there is no such line
 */
public record InkFinder(GroundLook look, @Nullable InkedBox box, @Nullable InkedBox insideFrame) {
  /** Opens the rows of a picture anew. */
  @FunctionalInterface
  public interface Opener {
    /** A reading from the first row on; the caller closes it. */
    RowReader open() throws PictureException;
  }

  /**
   * Looks at all rows.
   *
   * @param tolerance of a clean picture of that format
   */
  public static InkFinder find(Opener opener, int tolerance) throws PictureException {
    InkPass pass;
    GroundLook look;
    try (RowReader rows = opener.open()) {
      pass = InkPass.guessing(rows, tolerance);
      look = pass.judged(tolerance);
    }
    if (!look.equals(pass.look())) {
      try (RowReader rows = opener.open()) {
        pass = InkPass.knowing(rows, look, null);
      }
    }
    InkedBox box = pass.box();
    if (box == null && look.ground() == Ground.OPAQUE_WHITE && !isWhite(opener)) {
      return pale(opener, look);
    }
    InkedBox inside = null;
    if (box != null && look.ground() != Ground.OPAQUE_OTHER && pass.maybeFramed()) {
      inside = insideFrame(opener, look, box);
    }
    return new InkFinder(look, box, inside);
  }

  /**
   * A picture that is nowhere far from its own ground, and not pure white: pale cloth, say. It is
   * no ground without ink, but ink all over.
   */
  public static InkFinder pale(Opener opener, GroundLook look) throws PictureException {
    GroundLook other =
        new GroundLook(
            Ground.OPAQUE_OTHER, look.red(), look.green(), look.blue(), look.tolerance());
    try (RowReader rows = opener.open()) {
      return new InkFinder(other, InkedBox.ofSize(rows.width(), rows.height()), null);
    }
  }

  /** Whether every pixel is pure white or clear: what an empty page comes out as. */
  private static boolean isWhite(Opener opener) throws PictureException {
    try (RowReader rows = opener.open()) {
      int[] row = new int[rows.width()];
      for (int y = 0; y < rows.height(); y++) {
        rows.next(row);
        for (int p : row) {
          if ((p & 0xFFFFFF) != 0xFFFFFF && p >>> 24 > GroundLook.FAINT) {
            return false;
          }
        }
      }
      return true;
    }
  }

  private static @Nullable InkedBox insideFrame(Opener opener, GroundLook look, InkedBox box)
      throws PictureException {
    FrameLine line = new FrameLine(look, box);
    try (RowReader rows = opener.open()) {
      line.read(rows);
    }
    InkedBox inner = line.inner();
    if (inner == null) {
      return null;
    }
    try (RowReader rows = opener.open()) {
      return InkPass.knowing(rows, look, inner).box();
    }
  }
}
