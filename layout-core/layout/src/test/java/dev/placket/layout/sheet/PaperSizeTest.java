package dev.placket.layout.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.units.Length;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Paper against ISO 216, ASME Y14.1 (from memory) and trade use. */
class PaperSizeTest {
  private static final Map<String, String> OUR_NAMES =
      Map.of(
          "A3",
          "A3",
          "A4",
          "A4",
          "A5",
          "A5",
          "Letter",
          "Letter",
          "Legal",
          "Legal",
          "Tabloid/ANSI B",
          "11x17");

  @ParameterizedTest
  @CsvSource({
    "A0, 841, 1189",
    "A1, 594, 841",
    "A2, 420, 594",
    "A3, 297, 420",
    "A4, 210, 297",
    "A5, 148, 210",
    "A6, 105, 148", // ISO 216
    "Letter, 215.9, 279.4",
    "11x17, 279.4, 431.8", // ASME Y14.1 sizes A and B, from memory
    "Legal, 215.9, 355.6" // trade use
  })
  void measuresWhatTheStandardSays(String name, double width, double height) {
    PaperSize paper = PaperSize.named(name).orElseThrow();
    assertEquals(width, paper.width().mm(), 1e-9);
    assertEquals(height, paper.height().mm(), 1e-9);
  }

  /**
   * Sizes computed outside the project from 1 in = 25.4 mm = 72 pt = 96 CSS px = 1440 twip =
   * 914,400 EMU; lengths of sizes that are no paper here are converted all the same.
   */
  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "page_units.csv", numLinesToSkip = 1)
  void convertsAsTheTableSays(
      String page,
      double widthMm,
      double heightMm,
      double widthPt,
      double heightPt,
      double widthPx,
      double heightPx,
      double widthTwip,
      double heightTwip,
      long widthEmu,
      long heightEmu) {
    checkLength(Length.mm(widthMm), widthPt, widthPx, widthTwip, widthEmu);
    checkLength(Length.mm(heightMm), heightPt, heightPx, heightTwip, heightEmu);
    String ours = OUR_NAMES.get(page);
    Optional<PaperSize> paper = ours == null ? Optional.empty() : PaperSize.named(ours);
    assertEquals(ours != null, paper.isPresent());
    paper.ifPresent(
        p -> {
          checkLength(p.width(), widthPt, widthPx, widthTwip, widthEmu);
          checkLength(p.height(), heightPt, heightPx, heightTwip, heightEmu);
        });
  }

  private static void checkLength(Length length, double pt, double px, double twip, long emu) {
    assertEquals(pt, length.pt(), 0.5e-4);
    assertEquals(px, length.in() * 96, 0.5e-4);
    assertEquals(twip, length.pt() * 20, 0.5e-2);
    assertEquals(emu, length.emu());
  }

  @Test
  void allAreKnownWhateverTheLetterCase() {
    assertEquals(
        PaperSize.NAMED.size(), PaperSize.NAMED.stream().map(PaperSize::name).distinct().count());
    assertSame(PaperSize.A4, PaperSize.named("a4").orElseThrow());
    assertSame(PaperSize.LETTER, PaperSize.named("LETTER").orElseThrow());
    assertTrue(PaperSize.named("A4 ").isEmpty());
    assertTrue(PaperSize.named("foolscap").isEmpty());
  }

  @Test
  void turns() {
    PaperSize wide = PaperSize.A4.landscape();
    assertEquals(PaperSize.A4.height(), wide.width());
    assertEquals(PaperSize.A4.width(), wide.height());
    assertSame(wide, wide.landscape());
    assertEquals(PaperSize.A4, wide.portrait());
    assertSame(PaperSize.A4, PaperSize.A4.portrait());
  }

  @Test
  void refusesPaperWithoutASize() {
    assertThrows(
        IllegalArgumentException.class, () -> new PaperSize("x", Length.ZERO, Length.pt(1)));
    assertThrows(
        IllegalArgumentException.class, () -> new PaperSize("x", Length.pt(1), Length.pt(-1)));
  }
}
