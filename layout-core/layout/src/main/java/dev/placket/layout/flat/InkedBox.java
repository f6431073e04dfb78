package dev.placket.layout.flat;

/**
 * Where the drawn lines of a picture are, strokes included, in the picture's own units (drawing
 * units or pixels), y down.
 *
 * @param left its left edge
 * @param top its top edge
 * @param right above {@code left}
 * @param bottom above {@code top}
 */
public record InkedBox(double left, double top, double right, double bottom) {
  /**
   * Checks that it has a finite size.
   *
   * @throws IllegalArgumentException with the numbers, if it has none
   */
  public InkedBox {
    boolean finite =
        Double.isFinite(left)
            && Double.isFinite(top)
            && Double.isFinite(right)
            && Double.isFinite(bottom);
    if (!finite || !(right > left) || !(bottom > top)) {
      throw new IllegalArgumentException(
          "drawing bounds need a width and a height: "
              + left
              + ", "
              + top
              + ", "
              + right
              + ", "
              + bottom);
    }
  }

  /** An inked box from nought, of the size given. */
  public static InkedBox ofSize(double width, double height) {
    return new InkedBox(0, 0, width, height);
  }

  /** Width in the picture's units. */
  public double width() {
    return right - left;
  }

  /** Height in the picture's units. */
  public double height() {
    return bottom - top;
  }

  /** The longer of width and height, in the picture's units. */
  public double longestSide() {
    return Math.max(width(), height());
  }
}
