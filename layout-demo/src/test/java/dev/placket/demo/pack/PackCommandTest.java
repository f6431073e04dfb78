package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.placket.demo.Run;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A description becomes one PDF with all sheets, previews and a fit.json; slips write nothing. */
class PackCommandTest {
  @TempDir Path dir;

  private Path out() {
    return dir.resolve("out");
  }

  private Run fit(String text, Object... more) throws IOException {
    Path file = ExamplePack.write(dir, text);
    Object[] args = new Object[4 + more.length];
    System.arraycopy(new Object[] {"fit", file, "--out", out()}, 0, args, 0, 4);
    System.arraycopy(more, 0, args, 4, more.length);
    return Run.of(args);
  }

  private JsonNode fitJson() throws IOException {
    return new ObjectMapper().readTree(Files.readString(out().resolve("fit.json")));
  }

  private PDDocument pdf() throws IOException {
    return Loader.loadPDF(out().resolve("MG-3107.pdf").toFile());
  }

  @Test
  void makesAllSheetsInOneFile() throws IOException {
    Run run = fit(ExamplePack.TEXT);
    assertEquals(0, run.code(), run.err());
    try (PDDocument pdf = pdf()) {
      assertEquals(3, pdf.getNumberOfPages());
      PDFTextStripper text = new PDFTextStripper();
      text.setStartPage(2);
      text.setEndPage(2);
      assertTrue(text.getText(pdf).contains("2 of 3"), text.getText(pdf));
      // ISO 216: A4 is 210 by 297 mm, landscape here.
      assertEquals(297 / 25.4 * 72, pdf.getPage(0).getMediaBox().getWidth(), 0.01);
    }
    for (int i = 1; i <= 3; i++) {
      assertTrue(Files.exists(out().resolve("MG-3107-" + i + ".png")));
    }
    JsonNode sheets = fitJson().path("sheets");
    assertEquals(3, sheets.size());
    assertEquals("flats", sheets.get(0).path("id").asText());
    assertEquals(3, sheets.get(0).path("placements").size());
    assertEquals(1, sheets.get(2).path("placements").size());
  }

  @Test
  void fitJsonKeepsItsSchema() throws IOException {
    assertEquals(0, fit(ExamplePack.TEXT).code());
    try (InputStream in = getClass().getResourceAsStream("/placket-fit-1.schema.json")) {
      String schema = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      List<Error> errors =
          SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
              .getSchema(schema, InputFormat.JSON)
              .validate(Files.readString(out().resolve("fit.json")), InputFormat.JSON);
      assertEquals(List.of(), errors);
    }
  }

  @Test
  void aSwatchStaysInItsRow() throws IOException {
    assertEquals(0, fit(ExamplePack.TEXT).code());
    JsonNode sheet = fitJson().path("sheets").get(2);
    JsonNode row = sheet.path("windows").get(0);
    JsonNode ink = sheet.path("placements").get(0).path("inkedBox");
    // 3 mm to any rule, page-look row 7.
    double air = 3 / 25.4 * 72 - 1e-3;
    assertTrue(ink.path("top").asDouble() - row.path("top").asDouble() >= air);
    assertTrue(row.path("bottom").asDouble() - ink.path("bottom").asDouble() >= air);
    // 20 mm where no height is stated.
    assertEquals(20 / 25.4 * 72, row.path("bottom").asDouble() - row.path("top").asDouble(), 1e-3);
  }

  @Test
  void anotherPaperTakesTheSameDescription() throws IOException {
    Run run = fit(ExamplePack.TEXT, "--paper", "Letter");
    assertEquals(0, run.code(), run.err());
    try (PDDocument pdf = pdf()) {
      // ASME Y14.1 (from memory): 8.5 by 11 in, landscape here.
      assertEquals(11 * 72, pdf.getPage(2).getMediaBox().getWidth(), 0.01);
      assertEquals(8.5 * 72, pdf.getPage(2).getMediaBox().getHeight(), 0.01);
    }
  }

  @Test
  void everySlipIsToldAtOnceWithItsPlaceAndNothingIsWritten() throws IOException {
    String text =
        ExamplePack.TEXT
            .replace(
                "columns: [2fr, 1fr]\n    rows: [1fr, 30mm]",
                "colums: [2fr, 1fr]\n    rows: [1fr, 300mm]")
            .replace("back.svg, role: back", "bak.svg, role: bakc")
            .replace("{style-number}", "{style-nummer}")
            .replace("window: details", "window: detail");
    Run run = fit(text);
    assertEquals(2, run.code());
    assertFalse(Files.exists(out()));
    assertTrue(
        run.err().contains("'colums'") && run.err().contains("nearest is 'columns'"), run.err());
    assertTrue(run.err().contains("'bakc'") && run.err().contains("nearest is 'back'"), run.err());
    assertTrue(
        run.err().contains("'bak.svg'") && run.err().contains("nearest is 'back.svg'"), run.err());
    assertTrue(run.err().contains("nearest is 'style-number'"), run.err());
    assertTrue(run.err().contains("nearest is 'details'"), run.err());
    assertTrue(run.err().contains("do not add up"), run.err());
    int line =
        1 + (int) text.substring(0, text.indexOf("colums")).chars().filter(c -> c == '\n').count();
    assertTrue(
        run.err().contains("pack.yaml, line " + line + ", column 5: found the key 'colums'"),
        run.err());
  }
}
