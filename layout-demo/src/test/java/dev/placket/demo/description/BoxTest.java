package dev.placket.demo.description;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cells that stay empty for hands. */
class BoxTest {
  private static final String PACK =
      """
      format: placket-pack/1
      languages: [en, de]
      sheets:
        m:
          name: Materials
          columns: [1fr, 60mm]
          rows: [30mm, 30mm, 30mm, 1fr]
          areas:
            - views cloth
            - views dip
            - views trim
            - views sign
          cells:
            cloth: {box: swatch, caption: "K1"}
            dip: {box: lab-dip}
            trim: {box: trim}
            sign: {box: sign-off}
          windows: {views: }
          flats: {front: {file: front.svg, role: front}}
      """;

  @TempDir private Path dir;

  private Run fit(String text) throws IOException {
    Files.writeString(
        dir.resolve("front.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='-1 -1 102 102'><path"
            + " d='M0 0H100V100H0Z' fill='none' stroke='#000' stroke-width='0.5'/></svg>");
    Path pack = Files.writeString(dir.resolve("pack.yaml"), text);
    return Run.of("fit", pack, "--out", dir.resolve("out"), "--json", "--overwrite");
  }

  @Test
  void boxesSayWhatTheyAreForAndStayEmpty() throws IOException {
    Run run = fit(PACK);
    assertEquals(0, run.code(), run.err());
    String page;
    try (PDDocument pdf = Loader.loadPDF(dir.resolve("out/pack.pdf").toFile())) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setSortByPosition(true);
      page = stripper.getText(pdf).replaceAll("\\s+", " ");
    }
    for (String text :
        new String[] {
          "K1",
          "Attach swatch here",
          "Stoffmuster hier anbringen",
          "Lab dip approved",
          "Trim approved",
          "Zutat freigegeben",
          "Approved",
          "by",
          "date",
          "Datum"
        }) {
      assertTrue(page.contains(text), text + " in " + page);
    }
    // All four are labelled cells, which no flat covers.
    JsonNode sheet = new ObjectMapper().readTree(run.out()).path("sheets").get(0);
    assertEquals(4, sheet.path("labelledCells").size());
    double right = sheet.path("placements").get(0).path("footprint").path("right").asDouble();
    for (JsonNode cell : sheet.path("labelledCells")) {
      assertTrue(cell.path("left").asDouble() >= right, cell.toString());
    }
  }

  @Test
  void aBoxHasNoText() throws IOException {
    Run run = fit(PACK.replace("{box: trim}", "{box: trim, text: Button}"));
    assertEquals(2, run.code());
    assertTrue(run.err().contains("text in a box, which stays empty"), run.err());
    Run other = fit(PACK.replace("{box: trim}", "{box: button}"));
    assertEquals(2, other.code());
    assertTrue(other.err().contains("one of lab-dip, sign-off, swatch, trim"), other.err());
    assertFalse(Files.exists(dir.resolve("out")));
  }
}
