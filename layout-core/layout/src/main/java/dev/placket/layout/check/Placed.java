package dev.placket.layout.check;

import dev.placket.layout.fit.Placement;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Surround;
import java.math.BigDecimal;

/**
 * A flat with its placement and the exact rectangles that follow from the two.
 *
 * @param ink where its ink lies on the sheet
 * @param footprint the ink with what surrounds it, as {@link Surround} defines it
 */
record Placed(Flat flat, Placement at, ExactRect ink, ExactRect footprint) {
  static Placed of(Flat flat, Placement at) {
    InkedBox box = flat.ink();
    BigDecimal width = Exact.of(box.right()).subtract(Exact.of(box.left())).multiply(at.scale());
    BigDecimal height = Exact.of(box.bottom()).subtract(Exact.of(box.top())).multiply(at.scale());
    ExactRect ink = ExactRect.ofSize(at.left(), at.top(), width, height);
    return new Placed(flat, at, ink, around(ink, flat.surround()));
  }

  private static ExactRect around(ExactRect ink, Surround s) {
    BigDecimal left = ink.left().subtract(Exact.of(s.left()));
    BigDecimal right = ink.right().add(Exact.of(s.right()));
    BigDecimal lacking = Exact.of(s.leastWidth()).subtract(right.subtract(left));
    BigDecimal aside = Exact.half(lacking.max(BigDecimal.ZERO));
    return new ExactRect(
        left.subtract(aside),
        ink.top().subtract(Exact.of(s.top())),
        right.add(aside),
        ink.bottom().add(Exact.of(s.bottom())));
  }

  /** The longest side of the drawing in its own units. */
  static BigDecimal longestSide(Flat flat) {
    InkedBox box = flat.ink();
    BigDecimal width = Exact.of(box.right()).subtract(Exact.of(box.left()));
    return width.max(Exact.of(box.bottom()).subtract(Exact.of(box.top())));
  }

  String id() {
    return flat.id();
  }

  Role role() {
    return flat.role();
  }

  BigDecimal scale() {
    return at.scale();
  }

  /** Its scale over the common scale of its group; 1 without a group. */
  static BigDecimal ratio(Flat flat) {
    return flat.group() == null ? BigDecimal.ONE : Exact.of(flat.group().ratio());
  }
}
