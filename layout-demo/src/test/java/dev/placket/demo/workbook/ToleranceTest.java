package dev.placket.demo.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.function.LongUnaryOperator;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A worksheet ruled into many narrow columns and rows, where a pixel on each adds up to
 * centimetres.
 */
class ToleranceTest {
  private static final String SHEET = "xl/worksheets/sheet1.xml";
  private static final long PIXEL = 9525;
  private static final int COLUMNS = 36;
  private static final int ROWS = 60;
  private static final int COMBINATIONS = 400;

  @TempDir Path dir;

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void nothingTouchesWithinTheTolerance(int tolerance) throws IOException {
    Made made = fit(tolerance);
    Random random = new Random(tolerance);
    for (int i = 0; i < COMBINATIONS; i++) {
      // Every column and row by its own whim; some readers make all of them larger, and by far.
      long most = i % 3 == 0 ? 40 : tolerance;
      long[] columns = changed(made.columns, x -> random.nextLong(-tolerance, most + 1));
      long[] rows = changed(made.rows, x -> random.nextLong(-tolerance, most + 1));
      assertEquals(List.of(), made.touching(columns, rows));
    }
    long[] columns = changed(made.columns, x -> -tolerance);
    assertEquals(List.of(), made.touching(columns, changed(made.rows, x -> -tolerance)));
    assertEquals(List.of(), made.touching(columns, made.rows));
  }

  @Test
  void withoutToleranceAPixelIsEnoughToTouch() throws IOException {
    Made made = fit(0);
    assertEquals(List.of(), made.touching(made.columns, made.rows));
    long[] columns = changed(made.columns, x -> -1);
    long[] rows = changed(made.rows, x -> -1);
    assertFalse(made.touching(columns, rows).isEmpty(), "this sheet would not show a fault");
  }

  private record Made(
      List<RawWorkbook.Anchor> anchors, XSSFSheet sheet, long[] columns, long[] rows) {
    List<String> touching(long[] c, long[] r) {
      return Touching.found(anchors, sheet, c, r);
    }
  }

  private Made fit(int tolerance) throws IOException {
    Path file = dir.resolve("squared.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook();
        var to = Files.newOutputStream(file)) {
      squared(book);
      book.write(to);
    }
    Command command = new Command();
    Path flats = Command.plain(dir.resolve("flats"));
    Path out = dir.resolve("out" + tolerance);
    assertEquals(0, command.fit(flats, file, out, "--tolerance", "" + tolerance), command.said);
    RawWorkbook raw = new RawWorkbook(out.resolve("squared.xlsx"));
    try (InputStream in = Files.newInputStream(file)) {
      return new Made(
          raw.anchors("xl/drawings/drawing1.xml"),
          new XSSFWorkbook(in).getSheetAt(0),
          raw.columns(SHEET, COLUMNS + 4),
          raw.rows(SHEET, ROWS + 4));
    }
  }

  /** Labels all round and some inside, which leave room on every side of them. */
  private static void squared(XSSFWorkbook book) {
    XSSFSheet sheet = book.createSheet("Squared");
    sheet.getPrintSetup().setPaperSize((short) 9);
    for (int r = 0; r < ROWS; r++) {
      sheet.createRow(r).setHeightInPoints(12);
    }
    for (int c = 0; c < COLUMNS; c++) {
      sheet.setColumnWidth(c, 2 * 256);
      sheet.getRow(0).createCell(c).setCellValue(c);
      sheet.getRow(ROWS - 1).createCell(c).setCellValue(c);
    }
    for (int r = 1; r < ROWS - 1; r++) {
      sheet.getRow(r).createCell(0).setCellValue(r);
      sheet.getRow(r).createCell(COLUMNS - 1).setCellValue(r);
    }
    sheet.getRow(30).createCell(18).setCellValue(7);
  }

  private static long[] changed(long[] sizes, LongUnaryOperator pixels) {
    long[] other = new long[sizes.length];
    for (int i = 0; i < sizes.length; i++) {
      other[i] = Math.max(0, sizes[i] + pixels.applyAsLong(i) * PIXEL);
    }
    return other;
  }
}
