package dev.placket.demo.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Several ranges named in order are boxes: one flat in each, in order, spare ones empty. */
class BoxesTest {
  @TempDir Path dir;

  @Test
  void threeFlatsTakeTheFirstThreeOfSixBoxes() throws IOException {
    Path flats = Files.createDirectory(dir.resolve("flats"));
    for (int i = 1; i <= 3; i++) {
      Files.writeString(flats.resolve("detail-" + i + ".svg"), Command.PLAIN);
    }
    Path book = dir.resolve("pack.xlsx");
    try (XSSFWorkbook made = new XSSFWorkbook()) {
      XSSFSheet sheet = made.createSheet("Details");
      for (int column = 0; column < 6; column++) {
        sheet.setColumnWidth(column, 14 * 256);
      }
      sheet.createRow(0).createCell(0).setCellValue("Details");
      sheet.createRow(29).createCell(0).setCellValue("End");
      try (var to = Files.newOutputStream(book)) {
        made.write(to);
      }
    }
    List<String> args = new ArrayList<>();
    // Six boxes of nine rows, three beside one another in two rows.
    for (String box : List.of("A2:B10", "C2:D10", "E2:F10", "A12:B20", "C12:D20", "E12:F20")) {
      args.addAll(List.of("--window", box));
    }
    Command command = new Command();
    assertEquals(
        0, command.fit(flats, book, dir.resolve("out"), args.toArray(String[]::new)), command.said);
    try (XSSFWorkbook copy = new XSSFWorkbook(Files.newInputStream(dir.resolve("out/pack.xlsx")))) {
      XSSFDrawing drawing = copy.getSheetAt(0).getDrawingPatriarch();
      List<String> columns = new ArrayList<>();
      for (XSSFShape shape : drawing) {
        var anchor = (org.apache.poi.xssf.usermodel.XSSFClientAnchor) shape.getAnchor();
        columns.add(anchor.getCol1() + "-" + anchor.getCol2());
        assertTrue(anchor.getRow1() >= 1 && anchor.getRow2() <= 10, "in the first row of boxes");
      }
      assertEquals(3, columns.size());
    }
    JsonNode fit = new ObjectMapper().readTree(dir.resolve("out/fit.json").toFile());
    List<Double> lefts = new ArrayList<>();
    fit.at("/sheets/0/placements").forEach(p -> lefts.add(p.at("/inkedBox/left").asDouble()));
    assertEquals(lefts.stream().sorted().toList(), lefts, "detail 1 in the first box");
    assertEquals(3, lefts.stream().distinct().count());
  }
}
