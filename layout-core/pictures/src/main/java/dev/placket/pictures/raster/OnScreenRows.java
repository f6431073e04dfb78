package dev.placket.pictures.raster;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.RowReader;
import java.util.Arrays;

/** A frame where it stands on a larger clear screen, cut to that screen. */
record OnScreenRows(RowReader frame, int width, int height, int left, int top, int[] row, int[] at)
    implements RowReader {
  static RowReader of(RowReader frame, Gif gif) {
    RasterHead screen = gif.head();
    boolean fills =
        gif.left() == 0
            && gif.top() == 0
            && gif.width() == screen.width()
            && gif.height() == screen.height();
    return fills
        ? frame
        : new OnScreenRows(
            frame,
            screen.width(),
            screen.height(),
            gif.left(),
            gif.top(),
            new int[frame.width()],
            new int[1]);
  }

  @Override
  public void next(int[] out) throws PictureException {
    int y = at[0]++;
    if (y >= height) {
      throw new IllegalStateException("there are only " + y + " rows");
    }
    Arrays.fill(out, 0, width, 0);
    if (y >= top && y < top + frame.height()) {
      frame.next(row);
      int across = Math.min(row.length, width - left);
      if (across > 0) {
        System.arraycopy(row, 0, out, left, across);
      }
    }
  }

  @Override
  public void close() {
    frame.close();
  }
}
