package dev.placket.pictures.ink;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.base.Ground;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.RowReader;
import org.jspecify.annotations.Nullable;

/** One pass over the rows of a raster that takes in its edges and the box of its ink. */
final class InkPass {
  /** A row with this share of its width inked may be part of a frame line. */
  static final double FRAMED = 0.9;

  private final @Nullable Rings rings;
  private final GroundLook look;
  private final InkScan scan;
  private final int left;
  private final int top;
  private final int right;
  private final int bottom;
  private int x0;
  private int x1;
  private int y0 = -1;
  private int y1 = -1;
  private boolean firstFull;
  private boolean lastFull;

  private InkPass(RowReader rows, GroundLook look, @Nullable Rings rings, @Nullable InkedBox part) {
    this.rings = rings;
    this.look = look;
    this.scan = new InkScan(look, rows.width());
    this.left = part == null ? 0 : (int) part.left();
    this.top = part == null ? 0 : (int) part.top();
    this.right = part == null ? rows.width() : (int) part.right();
    this.bottom = part == null ? rows.height() : (int) part.bottom();
    this.x0 = right;
    this.x1 = left - 1;
  }

  /** A pass that takes the first row's ground for that of all. */
  static InkPass guessing(RowReader rows, int tolerance) throws PictureException {
    int[] row = new int[rows.width()];
    Rings rings = new Rings(rows.width(), rows.height());
    rows.next(row);
    InkPass pass = new InkPass(rows, GroundJudge.look(row, tolerance, 0.5), rings, null);
    pass.add(0, row);
    pass.rest(rows, row, 1);
    return pass;
  }

  /** A pass over a part, or all, of a picture whose ground is known. */
  static InkPass knowing(RowReader rows, GroundLook look, @Nullable InkedBox part)
      throws PictureException {
    InkPass pass = new InkPass(rows, look, null, part);
    pass.rest(rows, new int[rows.width()], 0);
    return pass;
  }

  private void rest(RowReader rows, int[] row, int from) throws PictureException {
    for (int y = from; y < rows.height(); y++) {
      rows.next(row);
      add(y, row);
    }
  }

  private void add(int y, int[] row) {
    if (rings != null) {
      rings.add(y, row);
    }
    if (y < top || y >= bottom || look.ground() == Ground.OPAQUE_OTHER) {
      return;
    }
    int l = scan.first(row, left, right);
    if (l < 0) {
      return;
    }
    int r = scan.last(row, Math.max(l, x1), right);
    x0 = Math.min(x0, l);
    x1 = Math.max(x1, r);
    lastFull = full(row, l, x1 + 1);
    if (y0 < 0) {
      y0 = y;
      firstFull = lastFull;
    }
    y1 = y;
  }

  /** Cheap where it matters: an ordinary row has ground soon after its first ink. */
  private boolean full(int[] row, int from, int to) {
    int most = (int) ((1 - FRAMED) * (to - from));
    int blank = 0;
    for (int x = from; x < to && blank <= most; x++) {
      blank += look.isGround(row[x]) ? 1 : 0;
    }
    return blank <= most;
  }

  GroundLook look() {
    return look;
  }

  /** The ground by all edges, once all rows are through. */
  GroundLook judged(int tolerance) {
    Rings r = rings;
    return r == null ? look : GroundJudge.judge(r::ring, r.count(), tolerance);
  }

  @Nullable InkedBox box() {
    if (look.ground() == Ground.OPAQUE_OTHER) {
      return new InkedBox(left, top, right, bottom);
    }
    return y0 < 0 ? null : new InkedBox(x0, y0, x1 + 1, y1 + 1);
  }

  /** Whether the first and the last row of ink are lines from side to side. */
  boolean maybeFramed() {
    return firstFull && lastFull;
  }
}
