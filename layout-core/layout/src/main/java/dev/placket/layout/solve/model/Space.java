package dev.placket.layout.solve.model;

/**
 * Where a flat's footprint may lie: a frame, and walls inside it that it must not overlap.
 *
 * <p>The same room is given a second time as its maximal empty rectangles: a footprint is clear of
 * all walls exactly if it lies in one of them.
 *
 * @param left the frame's left edge
 * @param top the frame's top edge
 * @param right the frame's right edge
 * @param bottom the frame's bottom edge
 * @param walls labelled cells and rules grown by the clearance, and what no window covers, each as
 *     left, top, right, bottom
 * @param rooms the maximal empty rectangles, in the same form
 */
public record Space(
    double left, double top, double right, double bottom, double[][] walls, double[][] rooms) {
  /** Whether a footprint of that size fits anywhere in it. */
  public boolean holds(double width, double height, double slack) {
    for (double[] r : rooms) {
      if (r[2] - r[0] >= width - slack && r[3] - r[1] >= height - slack) {
        return true;
      }
    }
    return false;
  }

  /** Only with itself: flats of one room share it, and arrays know no other sameness. */
  @Override
  public boolean equals(Object other) {
    return this == other;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(left + 3 * top + 5 * right + 7 * bottom);
  }
}
