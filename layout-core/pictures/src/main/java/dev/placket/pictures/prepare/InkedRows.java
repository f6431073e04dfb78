package dev.placket.pictures.prepare;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.base.PictureException;

/** Where rows that have been cleared hold ink. */
final class InkedRows {
  /** Alpha up to this is nothing anybody sees. */
  private static final int FAINT = 8;

  private InkedRows() {}

  /** The box of all pixels that are seen; all of the rows if there is none. O(pixels). */
  static InkedBox box(PixelRows rows) throws PictureException {
    int w = rows.width();
    int left = w;
    int right = 0;
    int top = -1;
    int bottom = 0;
    int[] row = new int[w];
    try (PixelRows.Cursor in = rows.open()) {
      for (int y = 0; y < rows.height(); y++) {
        in.next(row);
        int first = first(row);
        if (first < w) {
          left = Math.min(left, first);
          right = Math.max(right, last(row) + 1);
          top = top < 0 ? y : top;
          bottom = y + 1;
        }
      }
    }
    return top < 0 ? InkedBox.ofSize(w, rows.height()) : new InkedBox(left, top, right, bottom);
  }

  private static int first(int[] row) {
    int x = 0;
    while (x < row.length && row[x] >>> 24 <= FAINT) {
      x++;
    }
    return x;
  }

  private static int last(int[] row) {
    int x = row.length - 1;
    while (row[x] >>> 24 <= FAINT) {
      x--;
    }
    return x;
  }
}
