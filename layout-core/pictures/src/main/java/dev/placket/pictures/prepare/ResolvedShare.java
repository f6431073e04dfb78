package dev.placket.pictures.prepare;

import dev.placket.layout.density.EffectiveDensity;
import dev.placket.pictures.RasterPicture;
import dev.placket.pictures.base.PictureException;

/**
 * Tells what share of its pixel density a picture really resolves: one that was enlarged k times
 * before export resolves 1/k. Edges of a drawing made at its own density spread over one pixel and
 * a half in the mean, those of an enlarged one over k times as many; repeated pixels are counted.
 */
public final class ResolvedShare {
  /** Below this share a picture counts as enlarged; sharp ones are found at 0.9 and more. */
  public static final double ENLARGED = 0.85;

  /**
   * Squared steps over squared wholes of sharp edges. Drawn with coverage they have 0.65 to 0.76;
   * the mean over bilinear and bicubic enlargements is 0.66/k, from 0.54/k to 0.82/k. Measured on
   * line drawings at two sizes.
   */
  private static final double SHARP = 0.65;

  /** With fewer edges than make up this, nothing can be told. */
  private static final double LEAST = 50.0 * 255 * 255;

  private static final double REPEATED = 1.2;

  private final int width;
  private final EdgeWidths across;
  private final EdgeWidths down;
  private final boolean[] changes;
  private final RepeatedPixels rowsAlike = new RepeatedPixels();

  private ResolvedShare(int width) {
    this.width = width;
    this.across = new EdgeWidths(1);
    this.down = new EdgeWidths(width);
    this.changes = new boolean[width];
  }

  /**
   * The share of a raster, above 0 and at most 1; 1 where it has too few edges to tell. O(pixels),
   * holding three rows.
   *
   * @throws PictureException if its pixels cannot be read
   */
  public static double of(RasterPicture raster) throws PictureException {
    return of(new RasterRows(raster));
  }

  /** The print density that is really resolved: the share of the one that the pixels give. */
  public static EffectiveDensity resolved(EffectiveDensity density, double share) {
    return new EffectiveDensity(share * density.x(), share * density.y());
  }

  /**
   * The print density by which a picture is soft, crisp or heavy: the one that is resolved where it
   * was enlarged, else the one that its pixels give.
   */
  public static EffectiveDensity judged(EffectiveDensity density, double share) {
    return share < ENLARGED ? resolved(density, share) : density;
  }

  static double of(PixelRows rows) throws PictureException {
    ResolvedShare share = new ResolvedShare(rows.width());
    int[] argb = new int[rows.width()];
    int[][] grey = new int[3][rows.width()];
    try (PixelRows.Cursor in = rows.open()) {
      for (int y = 0; y < rows.height(); y++) {
        in.next(argb);
        toGrey(argb, grey[y % 3]);
        if (y >= 2) {
          share.look(y - 1, grey[(y - 2) % 3], grey[(y - 1) % 3], grey[y % 3]);
        }
      }
    }
    return share.found();
  }

  /** Lightness over white. */
  private static void toGrey(int[] argb, int[] grey) {
    for (int x = 0; x < argb.length; x++) {
      int p = argb[x];
      int light = ((p >> 16 & 255) + 2 * (p >> 8 & 255) + (p & 255)) / 4;
      grey[x] = 255 - (p >>> 24) * (255 - light) / 255;
    }
  }

  private void look(int y, int[] above, int[] row, int[] below) {
    boolean changed = false;
    for (int x = 1; x < width; x++) {
      int step = row[x] - row[x - 1];
      changes[x] |= step != 0;
      across.step(0, step, step == 0 ? 0 : Math.abs(below[x] - above[x]) / 2.0);
    }
    across.end(0);
    for (int x = 1; x < width - 1; x++) {
      int step = row[x] - above[x];
      changed |= step != 0;
      down.step(x, step, step == 0 ? 0 : Math.abs(row[x + 1] - row[x - 1]) / 2.0);
    }
    if (changed) {
      rowsAlike.change(y);
    }
  }

  private double found() {
    double wholes = across.wholes() + down.wholes();
    if (wholes < LEAST) {
      return 1;
    }
    RepeatedPixels columnsAlike = new RepeatedPixels();
    for (int x = 1; x < width; x++) {
      if (changes[x]) {
        columnsAlike.change(x);
      }
    }
    double repeats = Math.min(rowsAlike.repeats(), columnsAlike.repeats());
    double edges = Math.min(1, (across.steps() + down.steps()) / wholes / SHARP);
    return repeats >= REPEATED ? Math.min(edges, 1 / repeats) : edges;
  }
}
