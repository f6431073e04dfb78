package dev.placket.workbooks.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.sheet.PaperSize;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The numbers of papers against ISO/IEC 29500-1, 18.3.1.63. */
class PaperCodeTest {
  /**
   * All sheets of paper of 18.3.1.63 in millimetres (inches times 25.4), from memory; envelopes,
   * continuous forms, extra and transverse sizes left out, but for A4 transverse.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 215.9, 279.4",
    "2, 215.9, 279.4",
    "3, 279.4, 431.8",
    "4, 279.4, 431.8",
    "5, 215.9, 355.6",
    "6, 139.7, 215.9",
    "7, 184.15, 266.7",
    "8, 297, 420",
    "9, 210, 297",
    "10, 210, 297",
    "11, 148, 210",
    "12, 250, 353",
    "13, 176, 250",
    "14, 215.9, 330.2",
    "15, 215, 275",
    "16, 254, 355.6",
    "17, 279.4, 431.8",
    "18, 215.9, 279.4",
    "24, 431.8, 558.8",
    "25, 558.8, 863.6",
    "26, 863.6, 1117.6",
    "42, 250, 353",
    "55, 210, 297",
    "66, 420, 594"
  })
  void everySheetOfTheStandardIsKnown(int code, double width, double height) {
    PaperSize paper = PaperCode.paper(code).orElseThrow();
    assertEquals(width, paper.width().mm(), 1e-9);
    assertEquals(height, paper.height().mm(), 1e-9);
    for (PaperSize named : PaperSize.NAMED) {
      boolean same =
          Math.abs(named.width().mm() - width) < 0.01
              && Math.abs(named.height().mm() - height) < 0.01;
      if (same) {
        assertSame(named, paper);
      }
    }
  }

  static Stream<Object[]> numbersOfPoi() {
    return Stream.of(
        new Object[] {PrintSetup.A3_PAPERSIZE, PaperSize.A3},
        new Object[] {PrintSetup.A4_PAPERSIZE, PaperSize.A4},
        new Object[] {PrintSetup.A4_TRANSVERSE_PAPERSIZE, PaperSize.A4},
        new Object[] {PrintSetup.A5_PAPERSIZE, PaperSize.A5},
        new Object[] {PrintSetup.LETTER_PAPERSIZE, PaperSize.LETTER},
        new Object[] {PrintSetup.NOTE8_PAPERSIZE, PaperSize.LETTER},
        new Object[] {PrintSetup.LEGAL_PAPERSIZE, PaperSize.LEGAL},
        new Object[] {PrintSetup.TABLOID_PAPERSIZE, PaperSize.ELEVEN_BY_SEVENTEEN},
        new Object[] {PrintSetup.ELEVEN_BY_SEVENTEEN_PAPERSIZE, PaperSize.ELEVEN_BY_SEVENTEEN});
  }

  /** Numbers as a second library has them. */
  @ParameterizedTest
  @MethodSource("numbersOfPoi")
  void namedPapersHaveTheNumbersOfASecondLibrary(short code, PaperSize paper) {
    assertSame(paper, PaperCode.paper(code).orElseThrow());
  }

  @ParameterizedTest
  @CsvSource({"0", "20", "119", "-1"})
  void otherNumbersAreUnknown(int code) {
    assertTrue(PaperCode.paper(code).isEmpty());
  }
}
