package dev.placket.pictures.ink;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.RowReader;
import org.jspecify.annotations.Nullable;

/** Whether the outermost ink of a raster is a line drawn round the rest, and how thick it is. */
final class FrameLine {
  private final GroundLook look;
  private final int left;
  private final int top;
  private final int width;
  private final int height;
  private final int most;

  /** Inked pixels of the outermost rows and columns, from outside inwards. */
  private final int[][] inked;

  FrameLine(GroundLook look, InkedBox box) {
    this.look = look;
    this.left = (int) box.left();
    this.top = (int) box.top();
    this.width = (int) box.width();
    this.height = (int) box.height();
    this.most = Math.min(Rings.DEEPEST + 1, Math.min(width, height) / 4);
    this.inked = new int[4][most];
  }

  void read(RowReader rows) throws PictureException {
    int[] row = new int[rows.width()];
    for (int y = 0; y < top + height; y++) {
      rows.next(row);
      if (y >= top) {
        add(y - top, row);
      }
    }
  }

  private void add(int y, int[] row) {
    for (int d = 0; d < most; d++) {
      inked[2][d] += look.isGround(row[left + d]) ? 0 : 1;
      inked[3][d] += look.isGround(row[left + width - 1 - d]) ? 0 : 1;
    }
    int below = height - 1 - y;
    if (y < most || below < most) {
      int[] side = y < most ? inked[0] : inked[1];
      for (int x = left; x < left + width; x++) {
        side[Math.min(y, below)] += look.isGround(row[x]) ? 0 : 1;
      }
    }
  }

  /** What lies inside the line, or null if there is no line on all four sides. */
  @Nullable InkedBox inner() {
    int[] thick = new int[4];
    for (int side = 0; side < 4; side++) {
      int full = side < 2 ? width : height;
      int d = 0;
      // The first or last pixel of a line may be a faint one.
      while (d < most && inked[side][d] >= (InkPass.FRAMED / 2) * full) {
        d++;
      }
      if (d == 0 || d == most || !anyFull(inked[side], d, full)) {
        return null;
      }
      thick[side] = d;
    }
    return new InkedBox(
        left + thick[2], top + thick[0], left + width - thick[3], top + height - thick[1]);
  }

  private static boolean anyFull(int[] counts, int to, int full) {
    for (int d = 0; d < to; d++) {
      if (counts[d] >= InkPass.FRAMED * full) {
        return true;
      }
    }
    return false;
  }
}
