package dev.placket.layout.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rectangles on the sheet, worked by hand. */
class RectTest {
  private static final Rect BOX = new Rect(10, 20, 40, 60);

  @Test
  void hasASize() {
    assertEquals(30, BOX.width());
    assertEquals(40, BOX.height());
    assertEquals(BOX, Rect.ofSize(10, 20, 30, 40));
  }

  @ParameterizedTest
  @CsvSource({
    "10, 20, 40, 60, true",
    "15, 25, 20, 30, true",
    "9, 20, 40, 60, false",
    "10, 19, 40, 60, false",
    "10, 20, 41, 60, false",
    "10, 20, 40, 61, false"
  })
  void containsUpToItsEdges(double left, double top, double right, double bottom, boolean inside) {
    assertEquals(inside, BOX.contains(new Rect(left, top, right, bottom)));
  }

  @Test
  void touchingIsNoOverlap() {
    assertFalse(BOX.overlaps(new Rect(40, 20, 50, 60)));
    assertFalse(BOX.overlaps(new Rect(10, 60, 40, 70)));
    assertFalse(BOX.overlaps(new Rect(0, 0, 10, 20)));
    assertTrue(BOX.overlaps(new Rect(39, 59, 50, 70)));
    assertTrue(BOX.overlaps(new Rect(0, 0, 100, 100)));
  }

  @Test
  void separationIsTheMoreOfTheTwoAxes() {
    assertEquals(5, BOX.separation(new Rect(45, 62, 50, 70)));
    assertEquals(7, BOX.separation(new Rect(42, 67, 50, 70)));
    assertEquals(-10, BOX.separation(new Rect(20, 50, 30, 90)));
    assertEquals(5, new Rect(45, 62, 50, 70).separation(BOX));
  }

  @Test
  void growsAndShrinks() {
    assertEquals(new Rect(8, 18, 42, 62), BOX.grown(2));
    assertEquals(new Rect(20, 30, 30, 50), BOX.grown(-10));
    assertThrows(IllegalArgumentException.class, () -> BOX.grown(-16));
  }

  @ParameterizedTest
  @CsvSource({"2, 0, 1, 1", "0, 2, 1, 1", "NaN, 0, 1, 1", "0, 0, Infinity, 1"})
  void refusesWhatIsNoRectangle(double left, double top, double right, double bottom) {
    Exception e =
        assertThrows(IllegalArgumentException.class, () -> new Rect(left, top, right, bottom));
    assertTrue(
        String.valueOf(e.getMessage()).contains("left " + left + ", top " + top), e.getMessage());
  }
}
