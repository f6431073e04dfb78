package dev.placket.pictures.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Averaging against a reference that cuts every pixel into its common parts and counts them. */
class AreaRowsTest {
  @ParameterizedTest
  @CsvSource({
    "30,20,10,5",
    "30,20,30,20",
    "31,17,7,5",
    "12,9,5,8",
    "7,5,1,1",
    "5,4,15,8",
    "9,7,10,9",
    "64,3,63,2"
  })
  void everyPixelIsTheMeanOfItsArea(int w, int h, int width, int height) throws Exception {
    PixelGrid source = Grids.any(w, h, 31L * w + h);
    PixelGrid made = PixelGrid.of(new AreaRows(source, width, height));
    assertEquals(width, made.width());
    assertEquals(height, made.height());
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        assertEquals(
            Integer.toHexString(reference(source, x, y, width, height)),
            Integer.toHexString(made.at(x, y)),
            x + "," + y);
      }
    }
  }

  /** By hand: every source pixel cut into width × height parts, every new one into w × h. */
  private static int reference(PixelGrid s, int x, int y, int width, int height) {
    BigInteger[] sums = {BigInteger.ZERO, BigInteger.ZERO, BigInteger.ZERO, BigInteger.ZERO};
    long w = s.width();
    long h = s.height();
    for (long v = y * h; v < (y + 1) * h; v++) {
      for (long u = x * w; u < (x + 1) * w; u++) {
        int p = s.at((int) (u / width), (int) (v / height));
        int alpha = p >>> 24;
        sums[0] = sums[0].add(BigInteger.valueOf(alpha));
        for (int c = 1; c < 4; c++) {
          sums[c] = sums[c].add(BigInteger.valueOf((long) alpha * (p >> (24 - 8 * c) & 255)));
        }
      }
    }
    int a = rounded(sums[0], BigInteger.valueOf(w * h));
    if (a == 0) {
      return 0;
    }
    return a << 24
        | rounded(sums[1], sums[0]) << 16
        | rounded(sums[2], sums[0]) << 8
        | rounded(sums[3], sums[0]);
  }

  private static int rounded(BigInteger sum, BigInteger by) {
    return sum.shiftLeft(1).add(by).divide(by.shiftLeft(1)).intValueExact();
  }

  /** Far more rows to one than sums of 32 bits hold, by hand: opaque white over a half is 128. */
  @Test
  void aColumnOfAnyLengthIsSummed() throws Exception {
    PixelGrid tall = Grids.of(2, 100_000, (x, y) -> y % 2 == 0 ? 0xFFFFFFFF : 0xFF000000);
    PixelGrid one = PixelGrid.of(new AreaRows(tall, 1, 1));
    assertEquals(0xFF808080, one.at(0, 0));
  }

  @Test
  void hiddenColourDoesNotBleedIn() throws Exception {
    // Black at full alpha beside red at none: half alpha, still black.
    PixelGrid source = Grids.of(2, 1, (x, y) -> x == 0 ? 0xFF000000 : 0x00FF0000);
    assertEquals(0x80000000, PixelGrid.of(new AreaRows(source, 1, 1)).at(0, 0));
  }

  @ParameterizedTest
  @CsvSource({"193,137", "350,250", "699,499", "701,1000"})
  void nothingShifts(int width, int height) throws Exception {
    // Whatever drew it towards one side would draw its mirror image towards the other.
    PixelGrid source = Grids.any(700, 500, 3);
    PixelGrid mirrored = Grids.of(700, 500, (x, y) -> source.at(699 - x, 499 - y));
    PixelGrid made = PixelGrid.of(new AreaRows(source, width, height));
    PixelGrid other = PixelGrid.of(new AreaRows(mirrored, width, height));
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        assertEquals(made.at(x, y), other.at(width - 1 - x, height - 1 - y));
      }
    }
  }

  /**
   * The edge of a half plane, five degrees off upright, drawn 16 times too fine and averaged: its
   * transfer function is that of the box of one pixel, sin(πf)/(πf), which is one half at f =
   * 0.6034 cycles per pixel (ISO 12233, from memory; the number by solving the closed form by
   * hand).
   */
  @Test
  void theSlantedEdgeHasTheBoxFiltersSharpness() throws Exception {
    int fine = 16;
    int size = 96;
    double slope = Math.tan(Math.toRadians(5));
    PixelGrid source =
        Grids.of(
            size * fine,
            size * fine,
            (x, y) ->
                x + 0.5 < size * fine / 2.0 + slope * (y + 0.5 - size * fine / 2.0)
                    ? Grids.grey(0)
                    : Grids.grey(255));
    PixelGrid made = PixelGrid.of(new AreaRows(source, size, size));
    double low = 0.3;
    double high = 0.9;
    while (high - low > 1e-5) {
      double f = (low + high) / 2;
      if (transfer(made, slope, f) > 0.5) {
        low = f;
      } else {
        high = f;
      }
    }
    assertEquals(0.6034, low, 0.006);
  }

  /** Magnitude at a frequency, from differences along rows at their distance from the edge. */
  private static double transfer(PixelGrid made, double slope, double f) {
    int size = made.width();
    // Rows of one whole turn of the edge's phase, so that phases are met evenly.
    int rows = (int) Math.round(Math.floor(size * slope) / slope);
    double re = 0;
    double im = 0;
    double whole = 0;
    for (int y = 0; y < rows; y++) {
      double edge = size / 2.0 + slope * (y + 0.5 - size / 2.0);
      for (int x = 1; x < size; x++) {
        double step = (made.at(x, y) & 255) - (made.at(x - 1, y) & 255);
        double at = x - edge;
        re += step * Math.cos(2 * Math.PI * f * at);
        im += step * Math.sin(2 * Math.PI * f * at);
        whole += step;
      }
    }
    // A difference of neighbours is itself a box of one pixel: take it out again.
    double box = Math.sin(Math.PI * f) / (Math.PI * f);
    return Math.hypot(re, im) / whole / box;
  }
}
