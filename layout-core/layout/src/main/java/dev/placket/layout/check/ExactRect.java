package dev.placket.layout.check;

import dev.placket.layout.units.Rect;
import java.math.BigDecimal;

/** An exact rectangle on the sheet, in points, y down. */
record ExactRect(BigDecimal left, BigDecimal top, BigDecimal right, BigDecimal bottom) {
  static ExactRect of(Rect box) {
    return new ExactRect(
        Exact.of(box.left()), Exact.of(box.top()), Exact.of(box.right()), Exact.of(box.bottom()));
  }

  static ExactRect ofSize(BigDecimal left, BigDecimal top, BigDecimal width, BigDecimal height) {
    return new ExactRect(left, top, left.add(width), top.add(height));
  }

  BigDecimal width() {
    return right.subtract(left);
  }

  BigDecimal height() {
    return bottom.subtract(top);
  }

  BigDecimal longestSide() {
    return width().max(height());
  }

  ExactRect grown(BigDecimal by) {
    return new ExactRect(left.subtract(by), top.subtract(by), right.add(by), bottom.add(by));
  }

  /** The room between the two on x or on y, whichever is more; negative where they overlap. */
  BigDecimal separation(ExactRect other) {
    BigDecimal onX = other.left.subtract(right).max(left.subtract(other.right));
    BigDecimal onY = other.top.subtract(bottom).max(top.subtract(other.bottom));
    return onX.max(onY);
  }

  /** By how much this one runs out of the other at its worst edge; negative where it stays in. */
  BigDecimal beyond(ExactRect room) {
    BigDecimal onX = room.left.subtract(left).max(right.subtract(room.right));
    BigDecimal onY = room.top.subtract(top).max(bottom.subtract(room.bottom));
    return onX.max(onY);
  }
}
