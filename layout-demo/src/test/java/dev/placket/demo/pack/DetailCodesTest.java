package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
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

/** A callout that names a detail: one code beside the view and under the detail, with its sheet. */
class DetailCodesTest {
  @TempDir private Path dir;

  private Run fit(String callouts) throws IOException {
    for (String name : new String[] {"front", "collar", "pocket"}) {
      Files.writeString(
          dir.resolve(name + ".svg"),
          "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 90'>"
              + "<path id='neck' d='M9 9H80'/><path id='side' d='M80 20V80' stroke='#000'/>"
              + "<path d='M9 9H80V80H9Z' fill='none' stroke='#000'/></svg>");
    }
    Path pack = dir.resolve("pack.yaml");
    Files.writeString(
        pack,
        """
        format: placket-pack/1
        paper: A4
        sheets:
          flat:
            name: Flat sheet
            areas: [views]
            windows: {views: }
            flats:
              front:
                file: front.svg
                role: front
                points: {spot: {x: 40, y: 12}}
                callouts: {%s}
              pocket: {file: pocket.svg, role: detail, caption: Bellows pocket}
          parts:
            name: Construction
            areas: [parts]
            windows: {parts: }
            flats:
              collar: {file: collar.svg, role: detail, caption: Collar}
        """
            .formatted(callouts));
    return Run.of("fit", pack, "--out", dir.resolve("out"), "--overwrite");
  }

  private String page(int number) throws IOException {
    try (PDDocument document = Loader.loadPDF(dir.resolve("out/pack.pdf").toFile())) {
      PDFTextStripper text = new PDFTextStripper();
      text.setStartPage(number);
      text.setEndPage(number);
      return text.getText(document).replaceAll("\\s+", " ");
    }
  }

  @Test
  void theCodeStandsBesideTheViewAndUnderTheDetail() throws IOException {
    Run run =
        fit(
            "a: {point: spot, mark: D1, detail: collar},"
                + " b: {point: side, mark: D2, detail: pocket, text: Bellows}");
    assertEquals(0, run.code(), run.err());
    String views = page(1);
    assertTrue(views.contains("D1 Collar Sheet 2"), views);
    assertTrue(views.contains("D2 Bellows"), views);
    assertTrue(views.contains("D2 Bellows pocket"), views);
    assertTrue(page(2).contains("D1 Collar"), page(2));
    JsonNode fit = new ObjectMapper().readTree(dir.resolve("out/fit.json").toFile());
    JsonNode collar = fit.path("sheets").get(1).path("placements").get(0);
    assertTrue(collar.path("caption").asText().startsWith("D1"), collar.toString());
  }

  @Test
  void sheetsHaveBookmarks() throws IOException {
    assertEquals(0, fit("a: {point: spot, mark: 1}").code());
    try (PDDocument document = Loader.loadPDF(dir.resolve("out/pack.pdf").toFile())) {
      var outline = document.getDocumentCatalog().getDocumentOutline();
      assertEquals("Flat sheet", outline.getFirstChild().getTitle());
      assertEquals("Construction", outline.getLastChild().getTitle());
      assertEquals(document.getPage(1), outline.getLastChild().findDestinationPage(document));
    }
  }

  private void fault(String callouts, String found) throws IOException {
    Run run = fit(callouts);
    assertEquals(2, run.code(), run.out());
    assertTrue(run.err().contains(found), run.err());
  }

  @Test
  void slipsAreNamed() throws IOException {
    fault("a: {point: spot, mark: D1, detail: colar}", "no flat of the sheets named 'colar'");
    fault("a: {point: spot, text: A, detail: collar}", "a detail without mark");
    fault(
        "a: {point: spot, mark: D1, detail: collar}, b: {point: side, mark: D2, detail: collar}",
        "the mark 'D2' for collar");
    fault(
        "a: {point: spot, mark: D1, detail: collar}, b: {point: side, mark: D1, detail: pocket}",
        "the mark 'D1' for pocket");
  }
}
