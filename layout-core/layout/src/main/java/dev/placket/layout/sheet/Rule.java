package dev.placket.layout.sheet;

import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;

/**
 * A drawn line of the sheet, level or upright, from which pictures keep their clearance.
 *
 * @param axis the line without its width: a box of no width or no height, in points on the sheet
 * @param width the printed width, half of it to either side of the axis; not negative
 */
public record Rule(Rect axis, Length width) {
  /**
   * Checks that the axis is level or upright.
   *
   * @throws IllegalArgumentException if it is neither, or the width is negative
   */
  public Rule {
    if ((axis.width() != 0 && axis.height() != 0) || width.pt() < 0) {
      throw new IllegalArgumentException(
          "a rule is level or upright and has a width: " + axis + ", " + width);
    }
  }

  /** The ink of the rule: the axis with half the width on each side, in points on the sheet. */
  public Rect ink() {
    return axis.grown(width.pt() / 2);
  }
}
