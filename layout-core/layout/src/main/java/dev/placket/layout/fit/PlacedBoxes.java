package dev.placket.layout.fit;

import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Surround;
import dev.placket.layout.units.Length;
import java.math.BigDecimal;

/**
 * The rectangles that follow from a placement, exactly: every double of the flat is read as the
 * decimal it prints, and nothing is rounded.
 */
public final class PlacedBoxes {
  private static final BigDecimal HALF = new BigDecimal("0.5");

  private PlacedBoxes() {}

  /**
   * Where the flat's ink lies, in points on the sheet.
   *
   * @param flat the flat
   * @param at its placement
   */
  public static ExactBox ink(Flat flat, Placement at) {
    InkedBox box = flat.ink();
    BigDecimal width = decimal(box.right()).subtract(decimal(box.left()));
    BigDecimal height = decimal(box.bottom()).subtract(decimal(box.top()));
    return new ExactBox(
        at.left(),
        at.top(),
        at.left().add(width.multiply(at.scale())),
        at.top().add(height.multiply(at.scale())));
  }

  /**
   * The ink with the room round it, as {@link Surround} says, in points on the sheet.
   *
   * @param flat the flat
   * @param at its placement
   */
  public static ExactBox footprint(Flat flat, Placement at) {
    Surround s = flat.surround();
    ExactBox ink = ink(flat, at);
    BigDecimal sides = decimal(s.left()).add(decimal(s.right()));
    BigDecimal lacking = decimal(s.leastWidth()).subtract(ink.width().add(sides));
    BigDecimal aside = lacking.max(BigDecimal.ZERO).multiply(HALF);
    return new ExactBox(
        ink.left().subtract(decimal(s.left())).subtract(aside),
        ink.top().subtract(decimal(s.top())),
        ink.right().add(decimal(s.right())).add(aside),
        ink.bottom().add(decimal(s.bottom())));
  }

  private static BigDecimal decimal(double number) {
    return BigDecimal.valueOf(number);
  }

  private static BigDecimal decimal(Length length) {
    return BigDecimal.valueOf(length.pt());
  }
}
