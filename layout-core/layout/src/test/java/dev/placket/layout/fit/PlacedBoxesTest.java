package dev.placket.layout.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Surround;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

/** Rectangles from placements, worked by hand. */
class PlacedBoxesTest {
  private static final Flat FLAT = Flat.of("f", Role.DETAIL, new InkedBox(0.1, 0.2, 0.4, 0.8));
  private static final Placement AT =
      new Placement("f", d("10.1"), d("100.000001"), d("50.5"), false);

  @Test
  void inkIsExactWhereDoublesAreNot() {
    // 0.4 - 0.1 is 0.30000000000000004 in doubles; the decimals printed give 0.3 × 10.1 = 3.03.
    assertBox("100.000001", "50.5", "103.030001", "56.56", PlacedBoxes.ink(FLAT, AT));
  }

  @Test
  void sidesAreAdded() {
    Surround s = new Surround(Length.pt(1), Length.pt(2), Length.pt(3), Length.pt(4), Length.pt(7));
    assertBox(
        "99.000001",
        "48.5",
        "106.030001",
        "60.56",
        PlacedBoxes.footprint(FLAT.withSurround(s), AT));
  }

  @Test
  void inkStandsInTheMiddleOfTheLeastWidth() {
    // 3.03 of ink in 4.03: half a point on each side.
    Surround s = Surround.caption(Length.pt(12), Length.pt(4.03));
    ExactBox footprint = PlacedBoxes.footprint(FLAT.withSurround(s), AT);
    assertBox("99.500001", "50.5", "103.530001", "68.56", footprint);
    assertEquals(0, d("4.03").compareTo(footprint.width()));
    assertEquals(0, d("18.06").compareTo(footprint.height()));
    assertEquals(new Rect(99.500001, 50.5, 103.530001, 68.56), footprint.toBox());
  }

  private static void assertBox(
      String left, String top, String right, String bottom, ExactBox box) {
    assertEquals(0, d(left).compareTo(box.left()), box::toString);
    assertEquals(0, d(top).compareTo(box.top()), box::toString);
    assertEquals(0, d(right).compareTo(box.right()), box::toString);
    assertEquals(0, d(bottom).compareTo(box.bottom()), box::toString);
  }

  private static BigDecimal d(String number) {
    return new BigDecimal(number);
  }
}
