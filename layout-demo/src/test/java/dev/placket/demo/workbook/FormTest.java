package dev.placket.demo.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.Run;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.xmlbeans.XmlOptions;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Forms as workbooks: Apache POI and the reader of fastexcel read them, POI fills them in, and they
 * come back without loss. What came back changed is answered by row and column.
 */
class FormTest {
  private static final String PACK =
      """
      format: placket-pack/1
      measurements:
        unit: UNIT
        sizes: [S, M, L]
        sample: M
        points:
          A: {name: Half chest, tolerance: 1, value: 20, grade: 1/2}
          B: {name: Sleeve, how: from the shoulder, tolerance: +1/2 -1/4, value: 23 7/16, grade: 3/8}
          C: {name: Cuff, value: 6, grade: 0}
      samples:
        files: [fits.csvMORE]
        checks:
          fit-1: {stage: first fit}
          set: {stage: size set, sizes: [S, L]}
      sheets:
        one: {name: One, check: set, areas: [points], tables: {points: {check: points}}}
      """;

  private static final String FITS =
      """
      sample,size,point,ours,comment,number,action,state
      fit-1,M,A,20 1/8,,,,
      fit-1,,,,Hem rolls,4,factory,open
      fit-1,,,,Tack loose,5,factory,closed
      """;

  @TempDir Path dir;

  private Path write(boolean inches, String more) throws IOException {
    String text = PACK.replace("UNIT", inches ? "in" : "cm").replace("MORE", more);
    String fits = FITS;
    if (!inches) {
      text =
          text.replace("+1/2 -1/4", "+0.5 -0.25")
              .replace("23 7/16", "23.4")
              .replace("3/8", "0.4")
              .replace("1/2", "0.5");
      fits = fits.replace("20 1/8", "20.1");
    }
    Files.writeString(dir.resolve("fits.csv"), fits);
    return Files.writeString(dir.resolve("pack.yaml"), text);
  }

  /** Writes the form of the size set; the ranges that the command names. */
  private String form(boolean inches) throws IOException {
    Run run = Run.of("form", write(inches, ""), "set", "--overwrite");
    assertEquals(0, run.code(), run.err());
    return run.out().lines().filter(l -> l.contains("{workbook:")).findFirst().orElseThrow();
  }

  private Run back(boolean inches, String ranges) throws IOException {
    String more = ", " + ranges.strip().substring(2);
    return Run.of("fit", write(inches, more), "--out", dir.resolve("out"), "--overwrite");
  }

  private static Map<String, Integer> columns(XSSFSheet sheet) {
    Map<String, Integer> columns = new HashMap<>();
    for (Cell cell : sheet.getRow(0)) {
      columns.put(cell.getStringCellValue(), cell.getColumnIndex());
    }
    return columns;
  }

  private void edit(Consumer<XSSFWorkbook> change) throws IOException {
    Path file = dir.resolve("set.xlsx");
    try (XSSFWorkbook workbook = read(file)) {
      change.accept(workbook);
      try (OutputStream out = Files.newOutputStream(file)) {
        workbook.write(out);
      }
    }
  }

  private static XSSFWorkbook read(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }

  @Test
  void holdsTheListLockedAsText() throws IOException {
    form(true);
    try (XSSFWorkbook workbook = read(dir.resolve("set.xlsx"))) {
      assertEquals(2, workbook.getNumberOfSheets());
      assertEquals("set-S", workbook.getSheetName(0));
      XSSFSheet sheet = workbook.getSheetAt(1);
      assertTrue(sheet.getProtect());
      Map<String, Integer> at = columns(sheet);
      Row second = sheet.getRow(2);
      // Graded by hand: 23 7/16 and one step of 3/8 from M to L.
      Map<String, String> expected =
          Map.of(
              "sample", "set",
              "size", "L",
              "point", "B",
              "measured", "Sleeve",
              "unit", "in",
              "asked", "23 13/16",
              "tolerance", "+1/2 -1/4");
      expected.forEach(
          (column, text) -> {
            Cell cell = second.getCell(at.get(column));
            assertEquals(CellType.STRING, cell.getCellType(), column);
            assertEquals(text, cell.getStringCellValue());
            assertTrue(cell.getCellStyle().getLocked(), column);
          });
      for (String column : List.of("factory", "ours", "revised", "decision", "comment")) {
        Cell cell = second.getCell(at.get(column));
        assertEquals(CellType.BLANK, cell.getCellType(), column);
        assertEquals(false, cell.getCellStyle().getLocked(), column);
        assertEquals("@", cell.getCellStyle().getDataFormatString(), column);
      }
      // The open comment is carried over, the closed one is not.
      Row fourth = sheet.getRow(4);
      assertEquals("4", fourth.getCell(at.get("number")).getStringCellValue());
      assertEquals("Hem rolls", fourth.getCell(at.get("comment")).getStringCellValue());
      assertEquals(CellType.BLANK, sheet.getRow(5).getCell(at.get("number")).getCellType());
    }
  }

  /** By the schemas of ECMA-376, which POI has. */
  @Test
  void conformsToTheSchema() throws IOException {
    form(false);
    try (XSSFWorkbook workbook = read(dir.resolve("set.xlsx"))) {
      List<Object> errors = new ArrayList<>();
      workbook.getCTWorkbook().validate(new XmlOptions().setErrorListener(cast(errors)));
      for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
        workbook
            .getSheetAt(i)
            .getCTWorksheet()
            .validate(new XmlOptions().setErrorListener(cast(errors)));
      }
      assertEquals(List.of(), errors);
    }
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static List<org.apache.xmlbeans.XmlError> cast(List errors) {
    return errors;
  }

  @Test
  void readsAlikeInTwoReadersAndIsTheSameEachTime() throws IOException {
    form(true);
    byte[] first = Files.readAllBytes(dir.resolve("set.xlsx"));
    List<String> poi = new ArrayList<>();
    try (XSSFWorkbook workbook = read(dir.resolve("set.xlsx"))) {
      for (Row row : workbook.getSheetAt(0)) {
        for (Cell cell : row) {
          if (cell.getCellType() != CellType.BLANK) {
            poi.add(cell.getAddress() + " " + cell.getStringCellValue());
          }
        }
      }
    }
    List<String> other = new ArrayList<>();
    try (InputStream in = Files.newInputStream(dir.resolve("set.xlsx"));
        ReadableWorkbook workbook = new ReadableWorkbook(in)) {
      for (org.dhatim.fastexcel.reader.Row row : workbook.getFirstSheet().read()) {
        for (org.dhatim.fastexcel.reader.Cell cell : row) {
          if (cell != null && cell.getRawValue() != null && !cell.asString().isEmpty()) {
            other.add(cell.getAddress() + " " + cell.asString());
          }
        }
      }
    }
    assertEquals(poi, other);
    form(true);
    assertArrayEquals(first, Files.readAllBytes(dir.resolve("set.xlsx")));
  }

  /** As it is typed into a cell, and its value in the unit of the list. */
  private record Typed(String text, BigDecimal value) {
    static Typed of(Random random, boolean inches) {
      if (!inches) {
        BigDecimal value = BigDecimal.valueOf(50 + random.nextInt(4000), 2);
        return new Typed("", value);
      }
      int whole = 1 + random.nextInt(40);
      int parts = 1 + 2 * random.nextInt(8);
      BigDecimal value = BigDecimal.valueOf(whole).add(BigDecimal.valueOf(parts * 625L, 4));
      return new Typed(whole + " " + parts + "/16", value);
    }

    void into(Cell cell) {
      if (text.isEmpty()) {
        cell.setCellValue(value.doubleValue());
      } else {
        cell.setCellValue(text);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void comesBackWithoutLoss(boolean inches) throws IOException {
    Random random = new Random(24);
    for (int round = 0; round < 10; round++) {
      String ranges = form(inches);
      Map<String, Typed> typed = new HashMap<>();
      edit(
          workbook -> {
            for (int s = 0; s < 2; s++) {
              Map<String, Integer> at = columns(workbook.getSheetAt(s));
              for (int r = 1; r <= 3; r++) {
                Row row = workbook.getSheetAt(s).getRow(r);
                for (String column : List.of("factory", "ours", "revised")) {
                  Typed value = Typed.of(random, inches);
                  value.into(row.getCell(at.get(column)));
                  typed.put(s + column + (r - 1), value);
                }
                row.getCell(at.get("comment")).setCellValue("As “sewn”, ½ & <more> " + r);
              }
              Row spare = workbook.getSheetAt(s).getRow(5);
              spare.getCell(at.get("number")).setCellValue(9 + s);
              spare.getCell(at.get("comment")).setCellValue("Collar too high");
              spare.getCell(at.get("action")).setCellValue("factory");
            }
          });
      Run run = back(inches, ranges);
      assertEquals(0, run.code(), run.err());
      JsonNode set =
          new ObjectMapper()
              .readTree(Files.readString(dir.resolve("out/fit.json")))
              .at("/samples/1");
      for (int s = 0; s < 2; s++) {
        for (int p = 0; p < 3; p++) {
          JsonNode point = set.at("/sizes/" + s + "/points/" + p);
          for (String column : List.of("factory", "ours", "revised")) {
            BigDecimal value = typed.get(s + column + p).value();
            assertEquals(0, value.compareTo(point.get(column).decimalValue()), point.toString());
          }
          assertEquals("As “sewn”, ½ & <more> " + (p + 1), point.get("comment").asText());
        }
      }
      assertEquals(4, set.at("/comments/0/number").asInt());
      assertEquals("Collar too high", set.at("/comments/2/text").asText());
    }
  }

  private String fault(Consumer<XSSFSheet> change) throws IOException {
    String ranges = form(false);
    edit(workbook -> change.accept(workbook.getSheetAt(1)));
    Run run = back(false, ranges);
    assertEquals(2, run.code(), run.out());
    return run.err().replaceAll("\\s+", " ");
  }

  private static void swap(XSSFSheet sheet, int a, int b) {
    for (int c = 0; c < sheet.getRow(0).getLastCellNum(); c++) {
      Cell one = sheet.getRow(a).getCell(c);
      Cell two = sheet.getRow(b).getCell(c);
      String text = one.toString();
      one.setCellValue(two.toString());
      two.setCellValue(text);
    }
  }

  @Test
  void answersMovedRows() throws IOException {
    String fault = fault(sheet -> swap(sheet, 1, 3));
    assertTrue(
        fault.contains(
            "set.xlsx, worksheet set-L, row 2, column sent: a row that was sent as row 4"),
        fault);
    assertTrue(fault.contains("row 4, column sent: a row that was sent as row 2"), fault);
  }

  @Test
  void answersCodesThatWereMovedAlone() throws IOException {
    String fault =
        fault(
            sheet -> {
              int c = columns(sheet).get("point");
              sheet.getRow(1).getCell(c).setCellValue("B");
              sheet.getRow(2).getCell(c).setCellValue("A");
            });
    assertTrue(
        fault.contains("row 2, column sent: sample, size, point, asked, tolerance or unit"), fault);
    assertTrue(fault.contains("row 3, column sent: sample, size, point, asked"), fault);
  }

  @Test
  void answersChangedUnitsAndUnknownCodes() throws IOException {
    String fault =
        fault(
            sheet -> {
              sheet.getRow(1).getCell(columns(sheet).get("unit")).setCellValue("in");
              sheet.getRow(2).getCell(columns(sheet).get("point")).setCellValue("B1");
              sheet.getRow(3).getCell(columns(sheet).get("ours")).setCellValue("6 in");
            });
    assertTrue(fault.contains("row 2, column unit: 'in'"), fault);
    assertTrue(fault.contains("row 3, column point: no point of measure 'B1'"), fault);
    assertTrue(fault.contains("row 4, column ours: '6 in' in a list in cm"), fault);
  }

  @Test
  void namesTheSamplesThereAre() throws IOException {
    Run run = Run.of("form", write(false, ""), "fit-2");
    assertEquals(2, run.code());
    assertTrue(run.err().contains("has no sample 'fit-2' under checks"), run.err());
    assertTrue(run.err().contains("name one of fit-1, set"), run.err());
  }

  @Test
  void keepsAFileThatIsThere() throws IOException {
    Path there = Files.writeString(dir.resolve("set.xlsx"), "mine");
    Run run = Run.of("form", write(false, ""), "set");
    assertEquals(2, run.code());
    assertEquals("mine", Files.readString(there));
  }
}
