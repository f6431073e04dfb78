package dev.placket.layout.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Role;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The order of reading, by hand. */
class ReadingOrderTest {
  private static final Flat A = Flat.of("a", Role.DETAIL, InkedBox.ofSize(10, 10));
  private static final Flat B = Flat.of("b", Role.DETAIL, InkedBox.ofSize(10, 20));

  private static List<ReadingOrder.OutOfOrder> breaks(int ax, int ay, int bx, int by) {
    return ReadingOrder.of(List.of(A, B), List.of(at("a", ax, ay), at("b", bx, by))).breaks();
  }

  private static Placement at(String id, int left, int top) {
    return new Placement(
        id, BigDecimal.ONE, BigDecimal.valueOf(left), BigDecimal.valueOf(top), false);
  }

  @Test
  void aFlatAboveOrBesideComesFirst() {
    List<ReadingOrder.OutOfOrder> none = List.of();
    assertEquals(none, breaks(0, 0, 20, 0), "side by side");
    assertEquals(none, breaks(50, 0, 0, 10), "wholly above, though on the right");
    assertEquals(none, breaks(0, 19, 10, 0), "left, and beginning before the other ends");
  }

  @Test
  void whatStandsOtherwiseIsNamed() {
    List<ReadingOrder.OutOfOrder> both = List.of(new ReadingOrder.OutOfOrder("a", "b"));
    assertEquals(both, breaks(20, 0, 0, 0), "on the right");
    assertEquals(both, breaks(0, 20, 10, 0), "left, but the other ends where it begins");
    assertEquals(both, breaks(20, 5, 0, 0), "on the right and lower");
  }

  @Test
  void viewsAndFlatsOfOtherRolesAreNotCompared() {
    Flat swatch = Flat.of("b", Role.SWATCH, InkedBox.ofSize(10, 20));
    Flat front = Flat.of("a", Role.FRONT, InkedBox.ofSize(10, 10));
    List<Placement> placements = List.of(at("a", 20, 0), at("b", 0, 0));
    assertEquals(List.of(), ReadingOrder.of(List.of(A, swatch), placements).breaks());
    assertEquals(List.of(), ReadingOrder.of(List.of(front, B), placements).breaks());
  }

  @Test
  void columnsAreReadOneAfterTheOther() {
    List<Flat> three = List.of(A, B, Flat.of("c", Role.DETAIL, InkedBox.ofSize(10, 10)));
    // A above B, and C right of both, level with A.
    List<Placement> columns = List.of(at("a", 0, 0), at("b", 0, 10), at("c", 10, 0));
    ReadingOrder order = ReadingOrder.of(three, columns);
    assertEquals(List.of(new ReadingOrder.OutOfOrder("b", "c")), order.breaks());
    assertTrue(order.inColumns());
    List<Placement> rows = List.of(at("a", 0, 0), at("b", 10, 0), at("c", 0, 20));
    assertTrue(ReadingOrder.of(three, rows).isKept());
    assertFalse(ReadingOrder.of(three, rows).inColumns());
  }
}
