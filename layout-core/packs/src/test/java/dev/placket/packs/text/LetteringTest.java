package dev.placket.packs.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.placket.layout.units.Length;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Text widths against the font as PDFBox reads it; scripts; fallback. */
class LetteringTest {
  private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
  private static final Path OTHER = Path.of("/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf");

  @ParameterizedTest
  @ValueSource(strings = {"Sluice wrap coat", "420 g/m² ±0.7", "Ελληνικά", "Пальто", "WAVE 11.1"})
  void widthsAreTheFontsOwnAdvances(String text) throws IOException {
    Lettering lettering = Lettering.load();
    try (PDDocument document = new PDDocument();
        InputStream in = PDDocument.class.getResourceAsStream(FILE)) {
      PDType0Font font = PDType0Font.load(document, in);
      // Thousandths of an em; the em is the height of capitals over the font's own.
      float capitals = font.getFontDescriptor().getCapHeight();
      double wanted = font.getStringWidth(text) / capitals * Length.mm(2.5).pt();
      assertEquals(wanted, lettering.width(text, Length.mm(2.5)), wanted * 1e-3);
    }
  }

  @Test
  void capitalsAreAsHighAsAsked() {
    // Liberation Sans, OS/2 table: capitals of 1409 units in an em of 2048.
    assertEquals(1409.0 / 2048, Lettering.load().faces().get(0).capitals(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "قماش, arabic",
    "בד, hebrew",
    "कपड़ा, devanagari",
    "ผ้า, thai",
    "x̂, mark",
    "布, none of the sheet's letters",
    "a\u200Fb, control",
  })
  void whatCannotBeSetIsNamed(String text, String why) {
    String fault = Lettering.load().fault(text);
    assertNotNull(fault);
    assertTrue(fault.contains(why) && fault.contains("U+"), fault);
  }

  @Test
  void anAccentTypedAfterItsLetterIsTheSameLetter() {
    // Unicode: U+0065 U+0301 is canonically U+00E9.
    Lettering lettering = Lettering.load();
    assertNull(lettering.fault("e\u0301"));
    assertEquals(
        lettering.width("é", Lettering.VALUE), lettering.width("e\u0301", Lettering.VALUE), 1e-9);
  }

  @Test
  void furtherFontsServeWhatTheFirstLacks() throws IOException {
    assumeTrue(Files.exists(OTHER), "needs the font DejaVu Sans");
    Typeface other = Typeface.of("DejaVuSans.ttf", Files.readAllBytes(OTHER));
    Lettering lettering = Lettering.load().with(List.of(other));
    String armenian = "Գործվածք";
    assertNotNull(Lettering.load().fault(armenian));
    assertNull(lettering.fault(armenian + " A"));
    List<TextRun> runs = lettering.line("A" + armenian, 0, 0, Lettering.VALUE, false);
    assertEquals(2, runs.size());
    assertSame(lettering.faces().get(0), runs.get(0).face());
    assertSame(other, runs.get(1).face());
    assertEquals(lettering.width("A", Lettering.VALUE), runs.get(1).left(), 1e-9);
  }

  @Test
  void otherKindsOfFontsAreNamed() {
    assertTrue(refusal("OTTO and more").contains("CFF"));
    assertTrue(refusal("ttcf and more").contains("collection"));
    assertTrue(refusal("wOF2 and more").contains("web"));
    assertTrue(refusal("no font").contains("no TrueType"));
    assertTrue(refusal("").contains("no TrueType"));
  }

  private static String refusal(String bytes) {
    byte[] raw = bytes.getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
    return String.valueOf(
        assertThrows(IllegalArgumentException.class, () -> Typeface.of("f", raw)).getMessage());
  }

  @Test
  void chineseCharactersAreNeverSetSmall() {
    // Common practice: at least 2.5 mm.
    assertEquals(
        List.of(Lettering.VALUE), Lettering.steps("面料", Lettering.VALUE, Lettering.CAPTION));
    assertEquals(
        List.of(Lettering.VALUE, Lettering.CAPTION),
        Lettering.steps("cloth", Lettering.VALUE, Lettering.CAPTION));
  }

  @Test
  void wrapsAtBlanksOnly() {
    Lettering lettering = Lettering.load();
    double room = lettering.width("Patterns are", Lettering.VALUE) + 0.01;
    assertEquals(
        List.of("Patterns are", "made and", "checked"),
        lettering.wrap("Patterns are made and checked", Lettering.VALUE, room));
    assertEquals(
        List.of("3\u00A0mm"), lettering.wrap("3\u00A0mm", Lettering.VALUE, 0.1), "a hard blank");
  }
}
