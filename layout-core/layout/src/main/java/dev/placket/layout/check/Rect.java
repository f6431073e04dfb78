package dev.placket.layout.check;

import dev.placket.layout.units.Box;
import java.math.BigDecimal;

/** An exact rectangle on the sheet, in points, y down. */
record Rect(BigDecimal left, BigDecimal top, BigDecimal right, BigDecimal bottom) {
  static Rect of(Box box) {
    return new Rect(
        Exact.of(box.left()), Exact.of(box.top()), Exact.of(box.right()), Exact.of(box.bottom()));
  }

  static Rect ofSize(BigDecimal left, BigDecimal top, BigDecimal width, BigDecimal height) {
    return new Rect(left, top, left.add(width), top.add(height));
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

  Rect grown(BigDecimal by) {
    return new Rect(left.subtract(by), top.subtract(by), right.add(by), bottom.add(by));
  }

  /** The room between the two on x or on y, whichever is more; negative where they overlap. */
  BigDecimal separation(Rect other) {
    BigDecimal onX = other.left.subtract(right).max(left.subtract(other.right));
    BigDecimal onY = other.top.subtract(bottom).max(top.subtract(other.bottom));
    return onX.max(onY);
  }

  /** By how much this one runs out of the other at its worst edge; negative where it stays in. */
  BigDecimal beyond(Rect room) {
    BigDecimal onX = room.left.subtract(left).max(right.subtract(room.right));
    BigDecimal onY = room.top.subtract(top).max(bottom.subtract(room.bottom));
    return onX.max(onY);
  }
}
