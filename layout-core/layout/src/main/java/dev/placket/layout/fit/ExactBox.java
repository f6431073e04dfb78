package dev.placket.layout.fit;

import dev.placket.layout.units.Rect;
import java.math.BigDecimal;

/**
 * An upright rectangle on the sheet in exact decimals, in points from the sheet's top left corner,
 * y down.
 *
 * @param left the left edge in points
 * @param top the top edge in points
 * @param right the right edge in points
 * @param bottom the bottom edge in points
 */
public record ExactBox(BigDecimal left, BigDecimal top, BigDecimal right, BigDecimal bottom) {
  /** Width in points. */
  public BigDecimal width() {
    return right.subtract(left);
  }

  /** Height in points. */
  public BigDecimal height() {
    return bottom.subtract(top);
  }

  /** The nearest rectangle of doubles. */
  public Rect toBox() {
    return new Rect(
        left.doubleValue(), top.doubleValue(), right.doubleValue(), bottom.doubleValue());
  }
}
