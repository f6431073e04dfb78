package dev.placket.packs.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Words over lines, counted in columns. */
class TextLinesTest {
  /** By hand: twelve columns, further lines stand in by two. */
  @Test
  void wordsGoOnTheNextLineWhereTheyHaveNoRoom() {
    TextLines lines = new TextLines(12, false);
    lines.wrapped("", "one two three four five");
    assertEquals(
        "one two\n  three four\n  five\n".replace("\n", System.lineSeparator()), lines.toString());
  }

  /** Unicode Standard Annex 11: an ideograph is wide, a combining accent takes no column. */
  @Test
  void wideLettersCountTwice() {
    assertEquals(4, TextWidth.of("前片"));
    assertEquals(1, TextWidth.of("e\u0301"));
    assertEquals(2, TextWidth.of("ab"));
    assertEquals("前片  |", TextLines.padded("前片", 6) + "|");
  }

  /** ECMA-48: 1 sets strong, 22 ends it; the line's end stays outside. */
  @Test
  void aHeadingIsStrongWhereItMayBe() {
    TextLines lines = new TextLines(80, true);
    lines.heading("Flat sheet");
    assertEquals("\u001B[1mFlat sheet\u001B[22m" + System.lineSeparator(), lines.toString());
    TextLines plain = new TextLines(80, false);
    plain.heading("Flat sheet");
    assertTrue(plain.toString().startsWith("Flat"));
  }

  @Test
  void figuresAreGroupedByThousands() {
    assertEquals(
        "1,180 × 1,460", Figures.pixels(new dev.placket.layout.density.PixelSize(1180, 1460)));
    assertEquals("41 kB", Figures.bytes(40_716));
    assertEquals("7.1 MB", Figures.bytes(7_100_000));
    assertEquals("1 kB", Figures.bytes(3));
  }
}
