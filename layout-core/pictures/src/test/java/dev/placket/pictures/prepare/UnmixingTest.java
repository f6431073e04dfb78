package dev.placket.pictures.prepare;

import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Laid on the ground that was taken out, a pixel is what it was, whatever ink was looked for. */
class UnmixingTest {
  private static final int LEVELS = 0xFFFFFF;

  @Property(tries = 2000)
  void laidOnItsGroundItIsThePixel(
      @ForAll @IntRange(max = LEVELS) int pixel,
      @ForAll @IntRange(max = LEVELS) int ground,
      @ForAll @IntRange(max = LEVELS) int ink) {
    GroundColour colour =
        new GroundColour(255, ground >> 16, ground >> 8 & 255, ground & 255, 0, 1, false);
    int made = Unmixing.of(0xFF000000 | pixel, colour, 0xFF000000 | ink);
    for (int shift = 0; shift <= 16; shift += 8) {
      double again = Grids.over(made, shift, ground >> shift & 255);
      double off = Math.abs(again - (pixel >> shift & 255));
      assertTrue(off <= 1, Integer.toHexString(made) + " is off by " + off);
    }
  }
}
