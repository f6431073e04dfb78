package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.placket.packs.compose.Contrast;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** WCAG 2, contrast ratio: the ends of its scale, and figures known from its guidance. */
class ContrastTest {
  @ParameterizedTest
  @CsvSource({
    "#000000, #FFFFFF, 21",
    "#FFFFFF, #FFFFFF, 1",
    // From memory: the lightest grey that passes 4.5:1 on white, and the one that fails.
    "#767676, #FFFFFF, 4.54",
    "#777777, #FFFFFF, 4.48",
    // By hand: 0.2126 + 0.05 over 0.05; the luminance of pure red is its coefficient.
    "#FF0000, #000000, 5.25",
    "#FFFFFF, #FF0000, 4.00",
  })
  void isTheRatioOfTheStandard(String one, String other, double ratio) {
    assertEquals(ratio, Contrast.ratio(one, other), 0.005);
    assertEquals(ratio, Contrast.ratio(other, one), 0.005);
  }
}
