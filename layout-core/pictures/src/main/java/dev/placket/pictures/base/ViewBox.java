package dev.placket.pictures.base;

/**
 * The rectangle of a drawing that is shown, in drawing units, y down.
 *
 * @param x its left edge
 * @param y its top edge
 * @param width above zero
 * @param height above zero
 */
public record ViewBox(double x, double y, double width, double height) {
  /**
   * Checks that it has a finite size.
   *
   * @throws IllegalArgumentException with the four numbers, if it has none
   */
  public ViewBox {
    boolean finite = Double.isFinite(x) && Double.isFinite(y);
    boolean sized = width > 0 && height > 0;
    if (!finite || !sized || Double.isInfinite(width) || Double.isInfinite(height)) {
      throw new IllegalArgumentException(
          "a viewBox has a size: " + x + " " + y + " " + width + " " + height);
    }
  }
}
