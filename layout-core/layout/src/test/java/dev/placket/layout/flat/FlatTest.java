package dev.placket.layout.flat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A flat and its parts cannot be built wrong, and each change changes one thing. */
class FlatTest {
  private static final Flat FLAT = Flat.of("f", Role.BACK, new InkedBox(1, 2, 11, 42));
  private static final Length ONE = Length.pt(1);
  private static final Length MINUS = Length.pt(-0.001);

  @Test
  void eachChangeChangesOneThing() throws ReflectiveOperationException {
    Map<String, PlanePoint> points = Map.of("waist", new PlanePoint(0, 30));
    // Each stands upon the one before, so that a value lost on the way would show.
    Flat a = FLAT;
    Flat b = a.withSurround(Surround.caption(ONE, ONE));
    Flat c = b.withWindows(List.of("w"));
    Flat d = c.withGroup("g", 0.5);
    Flat e = d.withShare(0.2);
    Flat f = e.withLimits(new Limits(ONE, null));
    Flat g = f.withHeld(new Held(ONE, null, null));
    Flat h = g.withUnitLength(ONE);
    Flat i = h.withPoints(points, null);
    Flat j = i.withPoints(points, "waist");
    Flat k = j.withMayFlow(true);
    assertChanged(a, b, "surround");
    assertChanged(b, c, "windows");
    assertChanged(c, d, "group");
    assertChanged(d, e, "share");
    assertChanged(e, f, "limits");
    assertChanged(f, g, "held");
    assertChanged(g, h, "unitLength");
    assertChanged(h, i, "points");
    assertChanged(i, j, "levelOn");
    assertChanged(j, k, "mayFlow");
    assertChanged(k, k.withList("colourways"), "list");
  }

  private static void assertChanged(Flat from, Flat to, String what)
      throws ReflectiveOperationException {
    Set<String> changed = new TreeSet<>();
    for (Field c : Flat.class.getDeclaredFields()) {
      Object before = Flat.class.getMethod(c.getName()).invoke(from);
      Object after = Flat.class.getMethod(c.getName()).invoke(to);
      if (!java.util.Objects.equals(before, after)) {
        changed.add(c.getName());
      }
    }
    assertEquals(Set.of(what), changed);
    assertNotEquals(from, to);
  }

  @Test
  void keepsWhatItWasGiven() {
    List<String> windows = new ArrayList<>(List.of("w"));
    Map<String, PlanePoint> points = new HashMap<>(Map.of("waist", new PlanePoint(0, 30)));
    Flat flat = FLAT.withWindows(windows).withPoints(points, "waist");
    windows.add("v");
    points.clear();
    assertEquals(List.of("w"), flat.windows());
    assertEquals(Set.of("waist"), flat.points().keySet());
    assertThrows(UnsupportedOperationException.class, () -> flat.points().clear());
    assertThrows(UnsupportedOperationException.class, () -> flat.windows().clear());
  }

  @Test
  void standsLevelOnItsBottomOrOnTheNamedPoint() {
    assertEquals(42, FLAT.levelHeight());
    Map<String, PlanePoint> waist = Map.of("waist", new PlanePoint(5, 30));
    assertEquals(30, FLAT.withPoints(waist, "waist").levelHeight());
    assertEquals(42, FLAT.withPoints(waist, null).levelHeight());
    Exception e = assertThrows(IllegalArgumentException.class, () -> FLAT.withPoints(waist, "hem"));
    assertEquals("flat f has no point 'hem' to stand level on", e.getMessage());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void sharesRatiosAndHeldScalesAreAboveZero(double number) {
    Exception e = assertThrows(IllegalArgumentException.class, () -> FLAT.withShare(number));
    assertTrue(String.valueOf(e.getMessage()).startsWith("flat f: "), e.getMessage());
    e = assertThrows(IllegalArgumentException.class, () -> FLAT.withGroup("g", number));
    assertTrue(String.valueOf(e.getMessage()).contains("scale group g"), e.getMessage());
    assertThrows(IllegalArgumentException.class, () -> new Held(null, null, number));
  }

  @ParameterizedTest
  @CsvSource({"0, 0, 0, 1", "0, 0, 1, 0", "1, 0, 0, 1", "0, 0, NaN, 1", "0, -Infinity, 1, 1"})
  void anInkedBoxHasASize(double left, double top, double right, double bottom) {
    assertThrows(IllegalArgumentException.class, () -> new InkedBox(left, top, right, bottom));
  }

  @Test
  void anInkedBoxIsMeasured() {
    assertEquals(10, FLAT.ink().width());
    assertEquals(40, FLAT.ink().height());
    assertEquals(40, FLAT.ink().longestSide());
    assertEquals(7, InkedBox.ofSize(7, 3).longestSide());
  }

  @Test
  void limitsAreInOrder() {
    assertEquals(ONE, new Limits(ONE, ONE).greatest());
    assertThrows(IllegalArgumentException.class, () -> new Limits(Length.pt(1.001), ONE));
    assertThrows(IllegalArgumentException.class, () -> new Limits(MINUS, null));
    assertEquals(Double.POSITIVE_INFINITY, new Limits(ONE, null).greatestPt());
    assertEquals(1, new Limits(ONE, ONE).greatestPt());
  }

  @Test
  void aSurroundHasNoNegativeSide() {
    Length z = Length.ZERO;
    assertThrows(IllegalArgumentException.class, () -> new Surround(MINUS, z, z, z, z));
    assertThrows(IllegalArgumentException.class, () -> new Surround(z, MINUS, z, z, z));
    assertThrows(IllegalArgumentException.class, () -> new Surround(z, z, MINUS, z, z));
    assertThrows(IllegalArgumentException.class, () -> new Surround(z, z, z, MINUS, z));
    assertThrows(IllegalArgumentException.class, () -> new Surround(z, z, z, z, MINUS));
    assertEquals(new Surround(z, z, z, ONE, Length.pt(9)), Surround.caption(ONE, Length.pt(9)));
  }

  @Test
  void heldIsAnyOfThree() {
    assertTrue(new Held(ONE, null, null).any());
    assertTrue(new Held(null, ONE, null).any());
    assertTrue(new Held(null, null, 1.0).any());
    assertEquals(false, Held.NOTHING.any());
  }
}
