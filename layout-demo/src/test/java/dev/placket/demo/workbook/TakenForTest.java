package dev.placket.demo.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.placket.packs.refusal.Refusal;
import dev.placket.workbooks.geometry.CellRange;
import dev.placket.workbooks.parts.Parts;
import dev.placket.workbooks.parts.WorkbookLimits;
import dev.placket.workbooks.read.Mark;
import dev.placket.workbooks.read.Workbook;
import dev.placket.workbooks.read.WorkbookReader;
import dev.placket.workbooks.read.Worksheet;
import dev.placket.workbooks.read.WorksheetReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a worksheet is taken for: what stays clear and why, and how dense it prints. */
class TakenForTest {
  @TempDir Path dir;

  static List<String> all() {
    return RuledWorkbooks.ALL;
  }

  @ParameterizedTest
  @MethodSource("all")
  void allThatASecondLibraryFindsIsKeptClear(String name) throws IOException, Refusal {
    Path file = RuledWorkbooks.write(name, dir);
    Worksheet read = read(file);
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook poi = new XSSFWorkbook(in)) {
      for (CellRangeAddress range : LabelledByPoi.ranges(poi.getSheetAt(0))) {
        CellRange wanted = CellRange.parse(range.formatAsString());
        assertTrue(
            read.marks().stream().anyMatch(m -> m.range().contains(wanted)), wanted.toString());
      }
    }
  }

  @Test
  void reasons() throws IOException, Refusal {
    Worksheet table = read(RuledWorkbooks.write("table", dir));
    assertEquals(Mark.Why.TEXT, why(table, "A27"));
    assertEquals(Mark.Why.NUMBER, why(table, "B28"));
    assertEquals(Mark.Why.FORMULA, why(table, "N28"));
    assertEquals(Mark.Why.TO_FILL_IN, why(table, "M3:N5"));
    assertEquals(Mark.Why.COMMENT, why(table, "B25"));
    // 19 characters are longer than a column of 9.5.
    assertEquals(Mark.Why.TEXT_RUNS_IN, why(table, "B1"));
    Worksheet notes = read(RuledWorkbooks.write("notes", dir));
    assertEquals(Mark.Why.FILL, why(notes, "A2"));
    assertEquals(Mark.Why.TEXT, why(notes, "A1"));
    assertEquals(0, notes.grid().columns().size(4));
    assertEquals(0, notes.grid().rows().size(9));
    // 33 points.
    assertEquals(33 * 12_700, notes.grid().rows().size(7));
    assertEquals(List.of(CellRange.parse("A1:J67")), notes.setup().areas());
    assertEquals(62, notes.setup().percent());
  }

  @Test
  void thePrintedScaleCounts() throws IOException {
    Command command = new Command();
    Path out = dir.resolve("out");
    Path flats = Command.plain(dir.resolve("flats"));
    assertEquals(0, command.fit(flats, RuledWorkbooks.write("notes", dir), out), command.said);
    RawWorkbook raw = new RawWorkbook(out.resolve("notes.xlsx"));
    var front = raw.anchors("xl/drawings/drawing1.xml").get(0);
    byte[] png =
        raw.parts.entrySet().stream()
            .filter(p -> p.getKey().startsWith("xl/media/"))
            .map(p -> p.getValue())
            .filter(p -> ratio(p, front) < 1e-9)
            .findFirst()
            .orElseThrow();
    double inchesOnPaper = front.width() / 914_400.0 * 0.62;
    double dense = ByteBuffer.wrap(png).getInt(16) / inchesOnPaper;
    // 200 pixels to the printed inch are aimed at (common practice), whole EMU to the pixel.
    assertEquals(200, dense, 0.1);
    JsonNode sheet =
        new ObjectMapper().readTree(out.resolve("fit.json").toFile()).path("sheets").get(0);
    assertEquals(62, sheet.path("worksheet").path("printedPercent").asInt());
    assertEquals(List.of(), faults(Files.readString(out.resolve("fit.json"))));
    assertEquals(dense, sheet.path("placements").get(0).path("density").path("x").asDouble(), 1e-3);
  }

  /** What its own schema has against a fit.json. */
  private static List<String> faults(String json) throws IOException {
    try (InputStream in = TakenForTest.class.getResourceAsStream("/placket-fit-1.schema.json")) {
      String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
      Schema schema =
          SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(text);
      return schema.validate(json, InputFormat.JSON).stream().map(Object::toString).toList();
    }
  }

  private static double ratio(byte[] png, RawWorkbook.Anchor anchor) {
    double width = ByteBuffer.wrap(png).getInt(16);
    double height = ByteBuffer.wrap(png).getInt(20);
    return Math.abs(width / height * anchor.height() / anchor.width() - 1);
  }

  private static Mark.Why why(Worksheet sheet, String range) {
    CellRange wanted = CellRange.parse(range);
    return sheet.marks().stream()
        .filter(m -> m.range().contains(wanted))
        .findFirst()
        .orElseThrow(() -> new AssertionError(range))
        .why();
  }

  private static Worksheet read(Path file) throws Refusal {
    try (Parts parts = Parts.open(file, WorkbookLimits.DEFAULT)) {
      Workbook book = WorkbookReader.read(parts);
      return new WorksheetReader(parts, book).read(book.worksheets().get(0));
    }
  }
}
