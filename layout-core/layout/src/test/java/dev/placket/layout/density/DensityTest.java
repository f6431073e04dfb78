package dev.placket.layout.density;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.placket.layout.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DensityTest {
  /** PNG, third edition, pHYs: an inch is exactly 0.0254 m; rounded to the whole metre. */
  @ParameterizedTest
  @CsvSource({"72,2835", "96,3780", "150,5906", "200,7874", "300,11811", "600,23622"})
  void metresAndInches(int perInch, int perMetre) {
    assertEquals(perMetre, Math.round(Rate.perInch(perInch).perMetre()));
    assertEquals(perMetre * 0.0254, Rate.perMetre(perMetre).perInch(), 1e-9);
    assertEquals(perMetre, Rate.perMetre(perMetre).numerator());
  }

  /** 300 to the inch reads back as 299.9994 from a PNG: 11811 × 0.0254. */
  @Test
  void theFileIsNotRoundedToWhatItMayHaveMeant() {
    assertEquals(299.9994, Rate.perMetre(11811).perInch(), 1e-10);
    assertEquals(254, Rate.perCentimetre(100).perInch(), 1e-12);
    assertEquals(new Rate(3, 2, Rate.Unit.INCH), new Rate(300, 200, Rate.Unit.INCH));
  }

  /** Worked examples as published: 288 px over 4 in, 1200 over 4, 1500 × 1200 at 300. */
  @Test
  void pixelsOverPlacedInches() {
    EffectiveDensity d = EffectiveDensity.of(288, Length.in(4), 1200, Length.in(4));
    assertEquals(72, d.x(), 1e-12);
    assertEquals(300, d.y(), 1e-12);
    assertEquals(72, d.least(), 1e-12);
    DensityTargets at300 = new DensityTargets(300, 300, 300);
    assertEquals(5, at300.greatestSide(1500).in(), 1e-12);
    assertEquals(new PixelSize(1500, 1200), at300.wantedPixels(Length.in(5), Length.in(4)));
  }

  /**
   * A4 at 300 to the inch is 2480 × 3508 px to the nearest (ISO 216 sizes); upwards 2481 × 3508.
   */
  @Test
  void wantedPixelsAreRoundedUp() {
    DensityTargets at300 = new DensityTargets(300, 300, 300);
    assertEquals(new PixelSize(2481, 3508), at300.wantedPixels(Length.mm(210), Length.mm(297)));
    assertEquals(new PixelSize(2480, 3507), at300.mostPixels(Length.mm(210), Length.mm(297)));
    assertEquals(new PixelSize(600, 600), at300.wantedPixels(Length.mm(50.8), Length.cm(5.08)));
  }

  @ParameterizedTest
  @CsvSource({"149.9,SOFT", "150,CRISP", "200,CRISP", "300,CRISP", "300.1,HEAVY"})
  void states(double density, PrintState state) {
    assertEquals(state, DensityTargets.DEFAULT.state(new EffectiveDensity(density, density)));
  }

  @Test
  void thePoorerAxisDecides() {
    assertEquals(PrintState.SOFT, DensityTargets.DEFAULT.state(new EffectiveDensity(400, 100)));
    assertEquals(PrintState.CRISP, DensityTargets.DEFAULT.state(new EffectiveDensity(400, 250)));
  }

  /** ISO 8596, clause 3: acuity 1.0 resolves one minute of arc; C, computed from it. */
  @ParameterizedTest
  @CsvSource({"300,0.0873,291.06", "400,0.1164,218.30", "500,0.1454,174.64"})
  void theDefaultsSuitTheEye(double distance, double millimetres, double perInch) {
    double seen = distance * Math.tan(Math.toRadians(1 / 60.0));
    assertEquals(millimetres, seen, 5e-5);
    assertEquals(perInch, 25.4 / seen, 5e-3);
    // What is called heavy is more than is seen from a hand's distance; what is soft, less.
    assertEquals(true, DensityTargets.DEFAULT.heavy() >= perInch);
    assertEquals(true, DensityTargets.DEFAULT.soft() <= perInch);
  }

  @Test
  void nonsenseIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Rate.perInch(0));
    assertThrows(IllegalArgumentException.class, () -> new DensityTargets(200, 150, 300));
    assertThrows(
        IllegalArgumentException.class, () -> EffectiveDensity.of(5, Length.ZERO, 5, Length.in(1)));
  }
}
