package dev.placket.layout.units;

/**
 * An upright rectangle on the sheet, in points from the sheet's top left corner, y down.
 *
 * @param left the left edge in points
 * @param top the top edge in points
 * @param right the right edge in points, not below {@code left}
 * @param bottom the bottom edge in points, not below {@code top}
 */
public record Rect(double left, double top, double right, double bottom) {
  /**
   * Checks that edges are finite and in order.
   *
   * @throws IllegalArgumentException with the four numbers, if they are not
   */
  public Rect {
    boolean finite =
        Double.isFinite(left)
            && Double.isFinite(top)
            && Double.isFinite(right)
            && Double.isFinite(bottom);
    if (!finite || right < left || bottom < top) {
      throw new IllegalArgumentException(
          "no rectangle: left "
              + left
              + ", top "
              + top
              + ", right "
              + right
              + ", bottom "
              + bottom);
    }
  }

  /** A rectangle from its top left corner and its size, all in points. */
  public static Rect ofSize(double left, double top, double width, double height) {
    return new Rect(left, top, left + width, top + height);
  }

  /** Width in points. */
  public double width() {
    return right - left;
  }

  /** Height in points. */
  public double height() {
    return bottom - top;
  }

  /** Whether the other rectangle lies inside this one; shared edges count as inside. */
  public boolean contains(Rect other) {
    return left <= other.left && top <= other.top && right >= other.right && bottom >= other.bottom;
  }

  /** Whether the two share an area; touching edges do not count. */
  public boolean overlaps(Rect other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  /**
   * How far apart the two are on x or on y, whichever is more; negative where they overlap on both.
   * In points.
   */
  public double separation(Rect other) {
    double onX = Math.max(other.left - right, left - other.right);
    double onY = Math.max(other.top - bottom, top - other.bottom);
    return Math.max(onX, onY);
  }

  /** This rectangle with every edge moved outwards by the points given; negative moves inwards. */
  public Rect grown(double by) {
    return new Rect(left - by, top - by, right + by, bottom + by);
  }
}
