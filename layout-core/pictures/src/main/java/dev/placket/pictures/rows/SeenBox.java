package dev.placket.pictures.rows;

import dev.placket.layout.flat.InkedBox;

/** Boxes of pixels turned and squared along with their picture. */
public final class SeenBox {
  private SeenBox() {}

  /** Turned as Exif tag 274 says, for a picture of that stored size. */
  public static InkedBox turned(InkedBox b, int width, int height, int orientation) {
    boolean right = orientation == 2 || orientation == 3 || orientation == 7 || orientation == 8;
    boolean down = orientation == 3 || orientation == 4 || orientation == 6 || orientation == 7;
    double left = right ? width - b.right() : b.left();
    double r = right ? width - b.left() : b.right();
    double top = down ? height - b.bottom() : b.top();
    double bottom = down ? height - b.top() : b.bottom();
    return orientation >= 5
        ? new InkedBox(top, left, bottom, r)
        : new InkedBox(left, top, r, bottom);
  }

  /** Stretched to a larger picture, outwards to whole pixels. */
  public static InkedBox stretched(
      InkedBox b, int fromWidth, int fromHeight, int width, int height) {
    if (width == fromWidth && height == fromHeight) {
      return b;
    }
    double x = (double) width / fromWidth;
    double y = (double) height / fromHeight;
    return new InkedBox(
        Math.floor(b.left() * x),
        Math.floor(b.top() * y),
        Math.ceil(b.right() * x),
        Math.ceil(b.bottom() * y));
  }
}
