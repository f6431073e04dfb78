package dev.placket.packs.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.packs.description.PackColourways.Lab;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Colours of CIELAB on screens. */
class ScreenColourTest {
  /**
   * The primaries and secondaries of IEC 61966-2-1 in CIELAB under D65, as handbooks list them to
   * two decimals (from memory).
   */
  @ParameterizedTest
  @CsvSource({
    "53.24, 80.09, 67.20, #FF0000",
    "87.73, -86.18, 83.18, #00FF00",
    "32.30, 79.19, -107.86, #0000FF",
    "97.14, -21.55, 94.48, #FFFF00",
    "91.11, -48.09, -14.13, #00FFFF",
    "60.32, 98.23, -60.82, #FF00FF",
    "100, 0, 0, #FFFFFF",
    "0, 0, 0, #000000"
  })
  void primariesComeBackWithinOneStep(double l, double a, double b, String hex) {
    ScreenColour screen = ScreenColour.of(new Lab(l, a, b));
    int found = Integer.parseInt(screen.hex().substring(1), 16);
    int expected = Integer.parseInt(hex.substring(1), 16);
    for (int shift = 0; shift <= 16; shift += 8) {
      assertEquals(expected >> shift & 255, found >> shift & 255, 1, screen.hex());
    }
  }

  /**
   * CIE 15: L* of 50 is a luminance of 0.18419; IEC 61966-2-1 encodes it as 1.055 · 0.18419^(1/2.4)
   * − 0.055 = 0.4663, level 118.9.
   */
  @Test
  void middleGreyIsThatOfTheStandards() {
    assertEquals("#777777", ScreenColour.of(new Lab(50, 0, 0)).hex());
  }

  @Test
  void aColourThatScreensCannotShowIsMarked() {
    assertTrue(ScreenColour.of(new Lab(54, 2, 10)).shown());
    // A green of far more chroma than the primary of sRGB.
    assertFalse(ScreenColour.of(new Lab(60, -120, 60)).shown());
  }
}
