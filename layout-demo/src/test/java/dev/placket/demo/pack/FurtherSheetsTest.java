package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Details of a description go on over further sheets of the same kind. By hand: A4 across within 10
 * mm leaves 277 by 190 mm, less a header of 10 mm and 3 mm clearance all round 271 by 174 mm;
 * squares of 80 mm with 5 mm between stand three in a row, and two rows take 165 mm, so six on a
 * sheet.
 */
class FurtherSheetsTest {
  private static final int DETAILS = 14;

  @TempDir Path dir;

  private String text(String further) {
    StringBuilder text =
        new StringBuilder(
            """
            format: placket-pack/1
            fields: {style-number: MG-3107}
            header:
              rows: [10mm]
              areas: [sheet]
              cells:
                sheet: {caption: Sheet, text: "{sheet} of {sheets}"}
            sheets:
              cover:
                name: Cover
                areas: [note]
                cells: {note: {text: Details follow}}
              details:
                name: Details
                areas: [all]
                windows: {all: }
            """);
    text.append(further).append("    flats:\n");
    for (int i = 1; i <= DETAILS; i++) {
      String id = String.format("d%02d", i);
      text.append(
          "      " + id + ": {file: square.svg, role: detail, least: 80mm, caption: \"\"}\n");
    }
    return text.toString();
  }

  private Run fit(String text) throws IOException {
    Files.writeString(
        dir.resolve("square.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 100'>"
            + "<path d='M0,0H100V100H0Z'/></svg>");
    Path file = Files.writeString(dir.resolve("pack.yaml"), text);
    return Run.of("fit", file, "--out", dir.resolve("out"));
  }

  @Test
  void theFewestSheetsInTheOrderGiven() throws IOException {
    Run run = fit(text("    further: true\n"));
    assertEquals(0, run.code(), run.err());
    JsonNode sheets =
        new ObjectMapper().readTree(dir.resolve("out/fit.json").toFile()).get("sheets");
    assertEquals(1 + 3, sheets.size(), "fourteen at six a sheet are three sheets, and the cover");
    List<String> order = new ArrayList<>();
    for (JsonNode sheet : sheets) {
      List<String> its = new ArrayList<>();
      for (JsonNode placed : sheet.get("placements")) {
        its.add(placed.get("flat").asText());
        JsonNode box = placed.get("inkedBox");
        double mm = (box.get("right").asDouble() - box.get("left").asDouble()) * 25.4 / 72;
        assertTrue(mm >= 80 - 1e-6, mm + " mm");
      }
      assertTrue(its.size() <= 6, its.toString());
      order.addAll(its.stream().sorted().toList());
    }
    List<String> all = new ArrayList<>();
    for (int i = 1; i <= DETAILS; i++) {
      all.add(String.format("d%02d", i));
    }
    assertEquals(all, order, "the order is kept from sheet to sheet");
    try (PDDocument pdf = Loader.loadPDF(dir.resolve("out/MG-3107.pdf").toFile())) {
      assertEquals(4, pdf.getNumberOfPages());
      PDFTextStripper text = new PDFTextStripper();
      for (int page = 1; page <= 4; page++) {
        text.setStartPage(page);
        text.setEndPage(page);
        assertTrue(text.getText(pdf).contains(page + " of 4"), text.getText(pdf));
      }
    }
    assertTrue(Files.exists(dir.resolve("out/MG-3107-4.png")));
  }

  @Test
  void unaskedThereIsNoRoomAndItSaysSo() throws IOException {
    Run run = fit(text(""));
    assertEquals(4, run.code());
    assertTrue(run.err().contains("sheet details"), run.err());
    assertFalse(Files.exists(dir.resolve("out")));
  }

  @Test
  void oneThatIsTooLargeForAnySheetIsTold() throws IOException {
    Run run =
        fit(
            text("    further: true\n")
                .replace(
                    "d07: {file: square.svg, role: detail, least: 80mm",
                    "d07: {file: square.svg, role: detail, least: 180mm"));
    assertEquals(4, run.code());
    assertTrue(run.err().contains("d07"), run.err());
  }

  @Test
  void notOnASheetWithATable() throws IOException {
    String table = "    tables: {all: {columns: [{heading: A}], rows: [[1]]}}\n    further: true\n";
    Run run = fit(text(table).replace("    windows: {all: }\n", ""));
    assertEquals(2, run.code());
    assertTrue(run.err().contains("further on a sheet with tables"), run.err());
  }
}
