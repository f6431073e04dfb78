package dev.placket.layout.image;

import dev.placket.layout.flat.InkedBox;
import org.jspecify.annotations.Nullable;

/**
 * The ground and the ink of a raster, from its rows: one pass where the first rows tell the ground
 * right, a second where they do not, more only where a frame line seems to stand round the ink.
 *
 * @param look what counts as ground
 * @param box where the ink is, a frame line included, or null if there is none
 * @param insideFrame where the ink inside a frame line is, or null if there is no such line
 */
record InkFinder(GroundLook look, @Nullable InkedBox box, @Nullable InkedBox insideFrame) {
  /** Opens the rows of a picture anew. */
  @FunctionalInterface
  interface Opener {
    RowReader open() throws PictureException;
  }

  /**
   * Looks at all rows.
   *
   * @param tolerance of a clean picture of that format
   */
  static InkFinder find(Opener opener, int tolerance) throws PictureException {
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
    InkedBox inside = null;
    if (box != null && look.ground() != Ground.OPAQUE_OTHER && pass.maybeFramed()) {
      inside = insideFrame(opener, look, box);
    }
    return new InkFinder(look, box, inside);
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
