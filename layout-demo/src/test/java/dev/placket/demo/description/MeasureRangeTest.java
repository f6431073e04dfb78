package dev.placket.demo.description;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.Run;
import dev.placket.packs.description.CellTable;
import dev.placket.workbooks.parts.WorkbookLimits;
import dev.placket.workbooks.run.WorkbookRanges;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Points of measure in a range of a workbook, written and read again by Apache POI. */
class MeasureRangeTest {
  @TempDir private Path dir;

  private static final String HEAD =
      """
      format: placket-pack/1
      sheets:
        m: {name: Measurements, areas: [points], tables: {points: {measures: all}}}
      measurements:
        unit: cm
        sizes: [S, M, L]
        sample: M
      """;

  private static final String RANGE =
      HEAD
          + """
            workbook: grading.xlsx
            range: points
          """;

  private Run fit(String text) throws IOException {
    Path pack = Files.writeString(dir.resolve("pack.yaml"), text);
    return Run.of("fit", pack, "--out", dir.resolve("out"), "--json", "--overwrite");
  }

  private static void row(XSSFSheet sheet, int number, Object... values) {
    Row row = sheet.createRow(number);
    for (int i = 0; i < values.length; i++) {
      if (values[i] instanceof Double d) {
        row.createCell(2 + i).setCellValue(d);
      } else if (values[i] instanceof String s && s.startsWith("=")) {
        row.createCell(2 + i).setCellFormula(s.substring(1));
      } else if (values[i] != null) {
        row.createCell(2 + i).setCellValue((String) values[i]);
      }
    }
  }

  /** A title above the range, an empty row in it, and values that formulas compute. */
  private void workbook(Object value) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      XSSFSheet sheet = book.createSheet("Grading M'27");
      row(sheet, 0, "Points of measure");
      row(sheet, 3, "code", "name", "tolerance", "value", "grade");
      row(sheet, 4, "A", "Half chest", 1.0, value, "2.5");
      row(sheet, 6, "B", "Vent", "+0.5 -0.3", "=3*7.1+0.7", 0.0);
      Name name = book.createName();
      name.setNameName("points");
      name.setRefersToFormula("'Grading M''27'!$C$4:$G$20");
      book.getCreationHelper().createFormulaEvaluator().evaluateAll();
      try (OutputStream out = Files.newOutputStream(dir.resolve("grading.xlsx"))) {
        book.write(out);
      }
    }
  }

  private static JsonNode list(Run run) throws IOException {
    assertEquals(0, run.code(), run.err());
    return new ObjectMapper().readTree(run.out()).path("measurements");
  }

  /** 59.5 - 2.5 and + 2.5; 3 × 7.1 + 0.7 = 22, which a machine stores as 21.999999999999996. */
  @Test
  void aRangeGivesTheSameListAsAFile() throws IOException {
    workbook(59.5);
    JsonNode range = list(fit(RANGE));
    Files.writeString(
        dir.resolve("points.csv"),
        "code,name,tolerance,value,grade\nA,Half chest,1,59.5,2.5\nB,Vent,+0.5 -0.3,22,0\n");
    JsonNode file = list(fit(HEAD + "  csv: points.csv\n"));
    assertEquals(file, range);
    assertEquals("57", range.path("points").get(0).path("values").get(0).path("value").asText());
    JsonNode cells = list(fit(RANGE.replace("points\n", "\"'Grading M''27'!C4:G8\"\n")));
    assertEquals(file, cells);
  }

  @Test
  void slipsNameWorksheetAndRow() throws IOException {
    workbook("9 1/2");
    Run fraction = fit(RANGE);
    assertEquals(2, fraction.code(), fraction.err());
    assertTrue(
        fraction
            .err()
            .contains("grading.xlsx, worksheet Grading M'27, row 5: '9 1/2', which is no fraction"),
        fraction.err());
    workbook("=1/0");
    Run error = fit(RANGE);
    assertEquals(2, error.code(), error.err());
    assertTrue(error.err().contains("grading.xlsx"), error.err());
    assertTrue(error.err().contains("F5"), error.err());
    assertTrue(error.err().contains("#DIV/0!"), error.err());
    workbook(59.5);
    Run name = fit(RANGE.replace("points\n", "grades\n"));
    assertEquals(2, name.code(), name.err());
    assertTrue(name.err().contains("has no range 'grades'"), name.err());
    assertTrue(name.err().contains("a defined name: points"), name.err());
    Run sheet = fit(RANGE.replace("points\n", "Sizes!A1:B9\n"));
    assertTrue(sheet.err().contains("no worksheet 'Sizes'"), sheet.err());
    assertTrue(sheet.err().contains("it has Grading M'27"), sheet.err());
    Run empty = fit(RANGE.replace("points\n", "\"'Grading M''27'!M1:N9\"\n"));
    assertTrue(empty.err().contains("without a value"), empty.err());
    Run both = fit(RANGE + "  csv: points.csv\n");
    assertTrue(both.err().contains("one of points, csv, workbook"), both.err());
  }

  /** Texts, numbers, formulas and gaps at random places, as POI reads them. */
  @Property(tries = 60)
  void aRangeIsReadAsPoiReadsIt(@ForAll int seed) throws Exception {
    Random random = new Random(seed);
    Path file = Files.createTempFile("range", ".xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      book.createSheet("Other").createRow(1).createCell(1).setCellValue("no");
      XSSFSheet sheet = book.createSheet("Points");
      for (int r = 0; r < 12; r++) {
        Row row = random.nextInt(6) == 0 ? null : sheet.createRow(r);
        for (int c = 0; row != null && c < 8; c++) {
          fill(row.createCell(c), random);
        }
      }
      book.getCreationHelper().createFormulaEvaluator().evaluateAll();
      try (OutputStream out = Files.newOutputStream(file)) {
        book.write(out);
      }
      CellTable read = new WorkbookRanges(WorkbookLimits.DEFAULT).read(file, "Points!B3:G10");
      assertEquals("Points", read.worksheet());
      assertEquals(poi(sheet), read.rows());
    } finally {
      Files.delete(file);
    }
  }

  private static void fill(Cell cell, Random random) {
    switch (random.nextInt(5)) {
      case 0 -> cell.setCellValue("A" + random.nextInt(50) + " é <&> \u5206");
      case 1 -> cell.setCellValue(random.nextInt(4000) / 16.0);
      case 2 -> cell.setCellFormula(random.nextInt(9) + "*1.1+0.3");
      case 3 -> cell.setCellFormula("\"x\"&" + random.nextInt(9));
      default -> {
        // It stays empty.
      }
    }
  }

  private static List<CellTable.Row> poi(XSSFSheet sheet) {
    int last = 1;
    List<CellTable.Row> rows = new ArrayList<>();
    for (int r = 2; r <= 9; r++) {
      for (int c = 1; c <= 6; c++) {
        last = text(sheet, r, c).isEmpty() ? last : Math.max(last, c);
      }
    }
    for (int r = 2; r <= 9; r++) {
      List<String> fields = new ArrayList<>();
      for (int c = 1; c <= last; c++) {
        fields.add(text(sheet, r, c));
      }
      if (fields.stream().anyMatch(f -> !f.isEmpty())) {
        rows.add(new CellTable.Row(r + 1, fields));
      }
    }
    return rows;
  }

  private static String text(XSSFSheet sheet, int row, int column) {
    Cell cell = sheet.getRow(row) == null ? null : sheet.getRow(row).getCell(column);
    if (cell == null || cell.getCellType() == CellType.BLANK) {
      return "";
    }
    CellType type =
        cell.getCellType() == CellType.FORMULA
            ? cell.getCachedFormulaResultType()
            : cell.getCellType();
    if (type == CellType.STRING) {
      return cell.getStringCellValue();
    }
    String twelve = String.format(java.util.Locale.ROOT, "%.9f", cell.getNumericCellValue());
    return new BigDecimal(twelve).stripTrailingZeros().toPlainString();
  }
}
