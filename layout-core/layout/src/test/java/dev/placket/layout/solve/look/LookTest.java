package dev.placket.layout.solve.look;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.placket.layout.units.Rect;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Worked by hand from the formulas of Ngo, Teo and Byrne (2003), which come from memory. */
class LookTest {
  private static final double CLOSE = 1e-9;
  private static final Rect FRAME = new Rect(0, 0, 100, 100);

  @Test
  void aSquareInTheUpperLeftQuarter() {
    Look look = Look.of(FRAME, List.of(new Rect(0, 0, 50, 50)));
    // All weight on one side of both axes.
    assertEquals(0, look.balance(), CLOSE);
    // 2 × 2500 × 25 / (100 × 2500) = 0.5 off on both axes.
    assertEquals(0.5, look.equilibrium(), CLOSE);
    // Six sums of 1 against 0 for one of two pairs of quarters, each way: 6 / 12.
    assertEquals(0.5, look.symmetry(), CLOSE);
    assertEquals(1, look.sequence(), CLOSE);
    assertEquals(1, look.cohesion(), CLOSE);
    assertEquals(1, look.unity(), CLOSE);
    assertEquals(1, look.proportion(), CLOSE);
    assertEquals(1, look.simplicity(), CLOSE);
    // A quarter covered.
    assertEquals(0.5, look.density(), CLOSE);
    assertEquals(1, look.regularity(), CLOSE);
    assertEquals(1, look.economy(), CLOSE);
    assertEquals(1, look.homogeneity(), CLOSE);
    // Three of six pairs of quarters differ by 1, in x, y and area.
    assertEquals(0.5, look.rhythm(), CLOSE);
    assertEquals(10 / 13.0, look.order(), CLOSE);
  }

  @Test
  void theSameSquareInTheLowerRightQuarterIsReadLast() {
    Look look = Look.of(FRAME, List.of(new Rect(50, 50, 100, 100)));
    // It ranks 4 where 1 is wanted, the others one too low each: 6 of 8.
    assertEquals(0.25, look.sequence(), CLOSE);
  }

  @Test
  void fourEqualSquaresInTheQuarters() {
    Look look =
        Look.of(
            FRAME,
            List.of(
                new Rect(10, 10, 40, 40),
                new Rect(60, 10, 90, 40),
                new Rect(10, 60, 40, 90),
                new Rect(60, 60, 90, 90)));
    assertEquals(1, look.balance(), CLOSE);
    assertEquals(1, look.equilibrium(), CLOSE);
    assertEquals(1, look.symmetry(), CLOSE);
    assertEquals(1, look.rhythm(), CLOSE);
    // 4! ways, the most there are.
    assertEquals(1, look.homogeneity(), CLOSE);
    // Two lines each way for four: 1 - 4 / 8; one space: 1.
    assertEquals(0.75, look.regularity(), CLOSE);
    // 3 / (2 + 2 + 4)
    assertEquals(0.375, look.simplicity(), CLOSE);
    // One size: 1; (6400 - 3600) / (10000 - 3600) of the rest lies between: 0.5625.
    assertEquals((1 + 0.5625) / 2, look.unity(), CLOSE);
    // 3600 of 10000: 1 - 2 × 0.14.
    assertEquals(0.72, look.density(), CLOSE);
  }

  @Test
  void twoOfUnequalShape() {
    Look look = Look.of(FRAME, List.of(new Rect(0, 0, 40, 20), new Rect(60, 0, 80, 40)));
    // Left 800 × 30, right 800 × 20; all above.
    assertEquals(1 - (1 / 3.0 + 1) / 2, look.balance(), CLOSE);
    // x: 2 × (800 × -30 + 800 × 20) / (2 × 100 × 1600); y: 800 × -40 + 800 × -30.
    assertEquals(1 - (0.05 + 0.35) / 2, look.equilibrium(), CLOSE);
    // Layout 80 by 40 in a square: 0.5; one as the layout: 1, one 2 against 0.5: 0.25.
    assertEquals((0.5 + 0.625) / 2, look.cohesion(), CLOSE);
    // All three are double squares.
    assertEquals(1, look.proportion(), CLOSE);
    // Two lefts, one top; one space of 20: (1 - 3 / 4 + 1) / 2.
    assertEquals(0.625, look.regularity(), CLOSE);
    assertEquals(0.5, look.economy(), CLOSE);
    // 2! ways, and no more are possible for two.
    assertEquals(1, look.homogeneity(), CLOSE);
  }
}
