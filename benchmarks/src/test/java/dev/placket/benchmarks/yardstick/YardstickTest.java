package dev.placket.benchmarks.yardstick;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.benchmarks.pages.PageFile;
import dev.placket.benchmarks.pages.ReferencePage;
import dev.placket.benchmarks.pages.ReferencePage.Expected;
import dev.placket.benchmarks.pages.ReferencePage.Size;
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class YardstickTest {
  private static final double ROUNDING = 1e-9;

  static Stream<Yardstick> all() {
    List<Yardstick> all = new ArrayList<>(Yardstick.GREEDY);
    all.add(new RandomBottomLeft(20, 1));
    all.add(new EqualCells());
    return all.stream();
  }

  private static ReferencePage page(
      double width, double height, double gap, List<Rect> cells, Size... s) {
    return new ReferencePage("by hand", width + 20, height + 20, 10, gap, cells, List.of(s), null);
  }

  @ParameterizedTest
  @MethodSource("all")
  void arrangementsAreValidAndNoneBeatsTheKnownBound(Yardstick yardstick) {
    for (ReferencePage page : PageFile.builtIn("pages")) {
      Packing packing = yardstick.pack(page);
      Expected known = page.expected();
      assertNotNull(known);
      // Bounds: the reference sheets, see README.md beside them.
      assertTrue(packing.scale() <= known.bound() * (1 + 1e-6), page.id());
      assertTrue(packing.scale() > 0, page.id());
      assertValid(page, packing);
    }
  }

  private static void assertValid(ReferencePage page, Packing packing) {
    assertEquals(page.flats().size(), packing.boxes().size(), page.id());
    for (int i = 0; i < packing.boxes().size(); i++) {
      Rect box = packing.boxes().get(i);
      assertEquals(page.flats().get(i).width() * packing.scale(), box.width(), ROUNDING * 1e3);
      assertEquals(page.flats().get(i).height() * packing.scale(), box.height(), ROUNDING * 1e3);
      assertTrue(page.inside().grown(ROUNDING).contains(box), page.id() + " inside");
      for (Rect cell : page.labelled()) {
        assertTrue(cell.separation(box) >= page.gap() - ROUNDING, page.id() + " clear");
      }
      for (Rect other : packing.boxes().subList(0, i)) {
        assertTrue(other.separation(box) >= page.gap() - ROUNDING, page.id() + " apart");
      }
    }
  }

  // By hand: two squares of 10 side by side with a gap of 4 in 104 by 50 stand at 5 (50 + 4 + 50).
  @ParameterizedTest
  @MethodSource("all")
  void twoSquaresSideBySide(Yardstick yardstick) {
    ReferencePage page = page(104, 50, 4, List.of(), new Size(10, 10), new Size(10, 10));
    assertEquals(5, yardstick.pack(page).scale(), 1e-5);
  }

  // By hand: a cell over the left 40 of 100 by 60, clearance 4, leaves 56 by 60 to a square of 10.
  @ParameterizedTest
  @MethodSource("all")
  void oneSquareBesideACell(Yardstick yardstick) {
    ReferencePage page = page(100, 60, 4, List.of(new Rect(10, 10, 50, 70)), new Size(10, 10));
    assertEquals(5.6, yardstick.pack(page).scale(), 1e-5);
  }

  // By hand: three flats need 2 x 2 cells or 1 x 3. In 100 by 80 without a gap, 10 by 20 each,
  // three
  // columns are 33.3 by 80 (scale 3.33), two by two are 50 by 40 (scale 2), one column 100 by 26.7.
  @Test
  void equalCellsTakeTheBestDivision() {
    Size flat = new Size(10, 20);
    Packing packing = new EqualCells().pack(page(100, 80, 0, List.of(), flat, flat, flat));
    assertEquals(10 / 3.0, packing.scale(), 1e-9);
    // Centred: (33.33 - 33.33) / 2 across and (80 - 66.67) / 2 down, from the margin of 10.
    assertEquals(10, packing.boxes().get(0).left(), 1e-9);
    assertEquals(10 + (80 - 200 / 3.0) / 2, packing.boxes().get(0).top(), 1e-9);
  }

  @Test
  void maximalEmptyRectanglesRoundOneHole() {
    ReferencePage page = page(100, 80, 0, List.of(new Rect(40, 30, 60, 50)), new Size(1, 1));
    List<Rect> free = new FreeRectangles(Room.of(page, 1)).all();
    // By hand: left of, right of, above and below the hole (30, 20) to (50, 40).
    assertEquals(
        java.util.Set.of(
            new Rect(0, 0, 30, 80),
            new Rect(50, 0, 100, 80),
            new Rect(0, 0, 100, 20),
            new Rect(0, 40, 100, 80)),
        java.util.Set.copyOf(free));
  }

  @Test
  void theSameSeedGivesTheSamePacking() {
    ReferencePage page = PageFile.builtIn("pages").get(30);
    assertEquals(new RandomBottomLeft(30, 7).pack(page), new RandomBottomLeft(30, 7).pack(page));
  }
}
