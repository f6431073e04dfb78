package dev.placket.workbooks.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Widths, units and ranges against ISO/IEC 29500-1. */
class GeometryTest {
  /** ISO/IEC 29500-1, 18.3.1.13: eight characters at a digit of seven pixels. */
  @Test
  void theStandardsExampleOfAColumn() {
    assertEquals(8.7109375, ColumnWidth.ofCharacters(8, 7));
  }

  /** The formula of 18.3.1.13, worked out by hand for a digit of seven pixels. */
  @ParameterizedTest
  @CsvSource({"8.7109375, 61", "9.140625, 64", "8.0, 56", "0, 0"})
  void widthsInPixels(double width, int pixels) {
    assertEquals(pixels, ColumnWidth.pixels(width, 7));
  }

  /** DrawingML: 914,400 to the inch, 360,000 to the centimetre, 12,700 to the point. */
  @Test
  void emu() {
    assertEquals(914_400, Emu.PER_INCH);
    assertEquals(914_400, 96 * Emu.PER_PIXEL);
    assertEquals(100 * 360_000, Emu.PER_METRE);
    assertEquals(190_500, Emu.ofPoints(15));
  }

  /** 18.3.1.13: at 11 points a digit of the example's font is 7 pixels; 10 and 12 from memory. */
  @ParameterizedTest
  @CsvSource({"Calibri, 11, 7", "Arial, 10, 7", "Times New Roman, 12, 8", "ARIAL, 10, 7"})
  void digits(String font, double points, int pixels) {
    assertEquals(pixels, DigitWidth.pixels(font, points));
  }

  /** The last column is XFD, the 16,384th (ISO/IEC 29500-1, 18.18.7). */
  @ParameterizedTest
  @CsvSource({"0, A", "25, Z", "26, AA", "701, ZZ", "702, AAA", "16383, XFD"})
  void letters(int column, String letters) {
    assertEquals(letters, CellRange.letters(column));
    assertEquals(column, CellRange.parse(letters + "1").left());
  }

  @Test
  void ranges() {
    assertEquals(new CellRange(1, 1, 8, 40), CellRange.parse("$B$2:$H$40"));
    assertEquals(new CellRange(1, 1, 8, 40), CellRange.parse("H40:B2"));
    assertEquals(new CellRange(0, 4, Grid.COLUMNS, 6), CellRange.parse("5:6"));
    assertEquals(new CellRange(2, 0, 3, Grid.ROWS), CellRange.parse("C:C"));
    assertEquals("B2:H40", new CellRange(1, 1, 8, 40).toString());
    assertEquals("B2", CellRange.cell(1, 1).toString());
  }

  @ParameterizedTest
  @CsvSource({"''", "B", "2", "B2:", "B2:C", "B0", "XFE1", "A1048577", "A1:B2:C3", "#REF!"})
  void noRanges(String text) {
    assertThrows(IllegalArgumentException.class, () -> CellRange.parse(text));
  }

  @Test
  void tracks() {
    Tracks tracks = new Tracks.Builder(100, 1000).add(2, 4, 50).add(4, 5, 0).add(7, 8, 30).build();
    // 100 100 50 50 0 100 100 30 100 ...
    assertEquals(0, tracks.start(0));
    assertEquals(200, tracks.start(2));
    assertEquals(300, tracks.start(4));
    assertEquals(300, tracks.start(5));
    assertEquals(500, tracks.start(7));
    assertEquals(530, tracks.start(8));
    assertEquals(530 + 992 * 100, tracks.start(1000));
    assertEquals(1, tracks.at(199));
    assertEquals(2, tracks.at(200));
    assertEquals(3, tracks.at(299));
    // The hidden track holds no place.
    assertEquals(5, tracks.at(300));
    assertEquals(7, tracks.at(529));
    assertEquals(30, tracks.size(7));
    // Ten less each, and the hidden one stays hidden.
    assertEquals(90 + 90 + 40 + 40, tracks.changed(-10).start(5));
    assertEquals(0, tracks.changed(10).size(4));
  }

  @Test
  void tracksThatOverlapAreRefused() {
    Tracks.Builder builder = new Tracks.Builder(1, 10).add(2, 5, 1);
    assertThrows(IllegalArgumentException.class, () -> builder.add(4, 6, 1));
  }
}
