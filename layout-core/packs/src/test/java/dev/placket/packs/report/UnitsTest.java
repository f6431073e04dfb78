package dev.placket.packs.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.placket.layout.units.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures as a designer reads them; expected ones are written by hand. */
class UnitsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "0.16;   0.18; 0.16 mm, under 0.18 mm",
        "0.1764; 0.18; 0.176 mm, under 0.18 mm",
        "0.1799; 0.18; 0.1799 mm, under 0.18 mm",
        "1.44;   1.8;  1.44 mm, under 1.80 mm",
        // Nearer than anybody measures.
        "0.1799999; 0.18; 0.18000 mm, under 0.18 mm"
      })
  void aFigureUnderALimitIsToldFromIt(double printed, double limit, String words) {
    assertEquals(words, Units.MM.under(Length.mm(printed), Length.mm(limit)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {"4.572; 0.1800 in, under 0.2500 in", "6.34; 0.2496 in, under 0.2500 in"})
  void inchesHaveFourDecimals(double mm, String words) {
    assertEquals(words, Units.IN.under(Length.mm(mm), Length.in(0.25)));
  }
}
