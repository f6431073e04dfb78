package dev.placket.demo.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.Run;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A description says which flats go to which worksheet and which cells they may use; what is
 * written is read back with a second library (Apache POI).
 */
class DescribedWorkbookTest {
  private static final String TEXT =
      """
      format: placket-pack/1
      fields: {label: Mossgantry, style-number: MG-3107}
      workbook:
        file: ruled.xlsx
        worksheets:
          flats:
            worksheet: Flat sheet
            windows: [A5:D40, Room]
            labelled: C30:D31
            flats:
              front: {file: front.svg, role: front, window: A5:D40, unit: 10mm}
              pocket: {file: pocket.svg, role: detail, window: Room}
          Details:
            flats:
              hem: {file: hem.svg, role: detail}
      """;

  @TempDir Path dir;
  private Path workbook;
  private Path file;

  @BeforeEach
  void files() throws IOException {
    workbook = dir.resolve("ruled.xlsx");
    file = dir.resolve("pack.yaml");
    for (String name : List.of("front", "pocket", "hem")) {
      Files.writeString(dir.resolve(name + ".svg"), Command.PLAIN);
    }
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(workbook)) {
      XSSFSheet flats = book.createSheet("Flat sheet");
      flats.createRow(0).createCell(0).setCellValue("Style no.");
      flats.createRow(44).createCell(0).setCellValue("Cut from the measured table only.");
      Name room = book.createName();
      room.setNameName("Room");
      room.setRefersToFormula("'Flat sheet'!$F$5:$H$20");
      book.createSheet("Details").createRow(0).createCell(0).setCellValue("Style no.");
      book.createSheet("Notes").createRow(0).createCell(0).setCellValue("Left alone");
      book.write(out);
    }
  }

  private Run fit(String text, Object... more) throws IOException {
    Files.writeString(file, text);
    List<Object> args = new ArrayList<>(List.of("fit", file, "--out", dir.resolve("out")));
    args.addAll(List.of(more));
    return Run.of(args.toArray());
  }

  /** Worksheet, column and row of the top left of each picture, by its alternative text. */
  private Map<String, int[]> pictures(Path copy) throws IOException {
    Map<String, int[]> found = new TreeMap<>();
    try (XSSFWorkbook book = new XSSFWorkbook(copy.toString())) {
      for (int i = 0; i < book.getNumberOfSheets(); i++) {
        if (book.getSheetAt(i).getDrawingPatriarch() == null) {
          continue;
        }
        for (XSSFShape shape : book.getSheetAt(i).getDrawingPatriarch().getShapes()) {
          XSSFClientAnchor anchor = ((XSSFPicture) shape).getClientAnchor();
          found.put(shape.getShapeName(), new int[] {i, anchor.getCol1(), anchor.getRow1()});
        }
      }
    }
    return found;
  }

  /** What a worksheet does not show is said, never dropped without a word. */
  @Test
  void calloutsAndMeasuresAreSaidToBeMissing() throws IOException {
    String points = "points: {a: {across: 20%, down: 20%}, b: {across: 80%, down: 20%}}";
    String drawn = "callouts: {n: {point: a, text: Note}}, dimensions: {A: {from: a, to: b}}";
    Run run =
        fit(
            TEXT.replace("unit: 10mm}", "unit: 10mm, " + points + ", " + drawn + "}")
                + "measurements: {unit: cm, sizes: [M], sample: M,"
                + " points: {A: {name: Width, value: 9, grade: 0}}}\n"
                + "samples: {checks: {fit: {stage: first fit}}}\n");
    assertEquals(0, run.code(), run.err() + run.out());
    String out = run.out().replaceAll("\\s+", " ");
    assertTrue(out.contains("callouts: not drawn on worksheets"), run.out());
    assertTrue(out.contains("dimensions: not drawn on worksheets"), run.out());
    assertTrue(out.contains("measurements: not used with a workbook"), run.out());
    assertTrue(out.contains("samples: not used with a workbook"), run.out());
  }

  @Test
  void eachFlatLiesWhereTheDescriptionSays() throws IOException {
    byte[] before = Files.readAllBytes(workbook);
    Run run = fit(TEXT);
    assertEquals(0, run.code(), run.err() + run.out());
    assertTrue(run.out().contains("pack.yaml"), run.out());
    assertTrue(run.out().contains("Detail pocket"), run.out());
    assertArrayEquals(before, Files.readAllBytes(workbook), "the original is as it was");
    Map<String, int[]> found = pictures(dir.resolve("out/ruled.xlsx"));
    assertEquals(3, found.size(), found.keySet().toString());
    for (Map.Entry<String, int[]> e : found.entrySet()) {
      int[] at = e.getValue();
      switch (e.getKey().replaceAll(".*\\b(front|pocket|hem)\\b.*", "$1")) {
        case "front" -> assertTrue(at[0] == 0 && at[1] <= 3 && at[2] >= 4 && at[2] <= 39, "front");
        case "pocket" ->
            assertTrue(
                at[0] == 0 && at[1] >= 5 && at[1] <= 7 && at[2] >= 4 && at[2] <= 19, "pocket");
        case "hem" -> assertEquals(1, at[0]);
        default -> throw new AssertionError(e.getKey());
      }
    }
    JsonNode json = new ObjectMapper().readTree(dir.resolve("out/fit.json").toFile());
    assertEquals("MG-3107", json.at("/pack/styleNumber").asText(), json.get("pack").toString());
    assertEquals(2, json.get("sheets").size());
    boolean kept = false;
    for (JsonNode cell : json.at("/sheets/0/labelledCells")) {
      kept |= cell.get("name").asText().contains("C30");
    }
    assertTrue(kept, "the range that is to stay clear is a labelled cell");
  }

  @Test
  void anotherWorkbookMayTakeItsPlace() throws IOException {
    Path other = Files.move(workbook, dir.resolve("revised.xlsx"));
    Files.copy(other, workbook);
    Run run = fit(TEXT, "--onto", other);
    assertEquals(0, run.code(), run.err());
    assertTrue(Files.exists(dir.resolve("out/revised.xlsx")));
  }

  @Test
  void slipsAreToldWithTheirPlaces() throws IOException {
    refused(TEXT.replace("window: Room", "window: Rom"), ", line 12, ", "'Rom'");
    refused(TEXT.replace("file: ruled.xlsx", "file: rule.xlsx"), ", line 4, ", "'rule.xlsx'");
    refused(TEXT.replace("unit: 10mm", "held: {left: 10mm}"), ", line 11, ", "held on a worksheet");
    refused(TEXT.replace("hem: {", "front: {"), "'front' again", "an identifier of its own");
    refused(TEXT + "sheets: {a: {areas: [b], windows: {b: }}}\n", "both sheets and a workbook");
    refused(TEXT.replace("worksheets:", "worksheet:"), "the key 'worksheet'", "worksheets");
  }

  @Test
  void whatTheWorkbookLacksIsTold() throws IOException {
    refused(TEXT.replace("Flat sheet", "Flat shet"), "no worksheet 'Flat shet'", "Flat sheet");
    refused(TEXT.replace("Room", "Room2"), "'Room2' is neither a range", "Room");
    Files.writeString(workbook, "style, season");
    refused(TEXT, "is not a workbook but text");
  }

  @Test
  void whatIsForSheetsOfOurOwnIsRefused() throws IOException {
    for (String[] option : new String[][] {{"--paper", "Letter"}, {"--blank"}}) {
      Run run = fit(TEXT, (Object[]) option);
      assertEquals(2, run.code());
      assertTrue(run.err().contains(option[0] + ": does not apply to a workbook"), run.err());
    }
  }

  @Test
  void rangesAreSaidInOnePlace() throws IOException {
    Run run = fit(TEXT, "--window", "A1:B2");
    assertEquals(2, run.code());
    assertTrue(run.err().contains("leave out --worksheet"), run.err());
    Run sheets = fit("format: placket-pack/1\nsheets: {}\n", "--onto", workbook);
    assertEquals(2, sheets.code());
    assertTrue(sheets.err().contains("names no workbook"), sheets.err());
  }

  private void refused(String text, String... words) throws IOException {
    Run run = fit(text);
    assertEquals(2, run.code(), run.out() + run.err());
    for (String word : words) {
      assertTrue(run.err().contains(word), word + " in " + run.err());
    }
    assertFalse(Files.exists(dir.resolve("out")));
  }
}
