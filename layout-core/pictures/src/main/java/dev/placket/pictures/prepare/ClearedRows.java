package dev.placket.pictures.prepare;

import dev.placket.pictures.base.PictureException;

/**
 * Rows whose ground is transparent, and whose edge pixels hold only their share of ink, so that no
 * halo shows on any colour and white looks as before. Holds three bits for each pixel while it is
 * made, one afterwards, and a band of rows while it is read. O(pixels).
 */
final class ClearedRows implements PixelRows {
  private final PixelRows source;
  private final GroundColour ground;
  private final GroundMask.Result mask;

  private ClearedRows(PixelRows source, GroundColour ground, Clearing clearing)
      throws PictureException {
    this.source = source;
    this.ground = ground;
    this.mask = GroundMask.of(source, ground, clearing);
  }

  /**
   * Clears the ground of a picture, or gives the picture itself where there is none to clear: it is
   * transparent already, or its ground has a colour that is not to be cleared.
   *
   * @param lossy whether compression has left noise beside the lines, as in a JPEG
   */
  static PixelRows of(PixelRows source, Clearing clearing, boolean lossy) throws PictureException {
    if (clearing == Clearing.NONE) {
      return source;
    }
    GroundColour ground = GroundColour.of(source, lossy);
    return ground.clears(clearing) ? new ClearedRows(source, ground, clearing) : source;
  }

  @Override
  public int width() {
    return source.width();
  }

  @Override
  public int height() {
    return source.height();
  }

  @Override
  public Cursor open() throws PictureException {
    return new Band(source.open());
  }

  /** A band of rows round the one that is asked for. */
  private final class Band implements Cursor, EdgeInk.Window {
    /** Beyond an edge's reach a line's width is looked at. */
    private static final int ROUND = EdgeInk.REACH + EdgeInk.WIDE;

    private final Cursor in;
    private final int[][] rows = new int[2 * ROUND + 1][source.width()];
    private final EdgeInk edge = new EdgeInk(ground, mask, this);
    private int read;
    private int y;

    Band(Cursor in) {
      this.in = in;
    }

    @Override
    public int[] row(int at) {
      return rows[at % rows.length];
    }

    @Override
    public void next(int[] out) throws PictureException {
      for (; read <= Math.min(height() - 1, y + ROUND); read++) {
        int[] row = row(read);
        in.next(row);
        for (int x = 0; x < row.length; x++) {
          row[x] = ground.opaque(row[x]);
        }
      }
      System.arraycopy(row(y), 0, out, 0, width());
      long[] clear = mask.cleared().row(y);
      for (int word = 0; word < clear.length; word++) {
        if (clear[word] != 0) {
          clear(out, word * 64, clear[word]);
        }
      }
      unmix(out);
      y++;
    }

    private void clear(int[] out, int from, long bits) {
      for (long left = bits; left != 0; left &= left - 1) {
        out[from + Long.numberOfTrailingZeros(left)] = 0;
      }
    }

    private void unmix(int[] out) {
      BitRows cleared = mask.cleared();
      int top = Math.max(0, y - EdgeInk.REACH);
      int bottom = Math.min(height() - 1, y + EdgeInk.REACH);
      long before = 0;
      long here = any(cleared, top, bottom, 0);
      for (int word = 0; word < cleared.stride; word++) {
        long after = word + 1 < cleared.stride ? any(cleared, top, bottom, word + 1) : 0;
        long near = here;
        for (int k = 1; k <= EdgeInk.REACH; k++) {
          near |= here << k | here >>> k | before >>> 64 - k | after << 64 - k;
        }
        for (long left = near & ~cleared.row(y)[word]; left != 0; left &= left - 1) {
          int x = word * 64 + Long.numberOfTrailingZeros(left);
          if (x < width()) {
            out[x] = edge.unmixed(x, y);
          }
        }
        before = here;
        here = after;
      }
    }

    private static long any(BitRows cleared, int top, int bottom, int word) {
      long any = 0;
      for (int v = top; v <= bottom; v++) {
        any |= cleared.row(v)[word];
      }
      return any;
    }

    @Override
    public void close() {
      in.close();
    }
  }
}
