package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A scale group over several sheets. By hand: A4 across within 10 mm leaves 190 mm of height, less
 * half of a rule of 0.5 mm and 3 mm above and below 183.5 mm. A front of 100 units would be so high
 * by itself; an inside view of the same garment has 200 units for it, half the scale.
 */
class OneScaleTest {
  private static final String TEXT =
      """
      format: placket-pack/1
      one-scale: views
      sheets:
        outside:
          name: Outside
          areas: [all]
          windows: {all: }
          flats:
            front: {file: front.svg, role: front, group: views, ratio: 1, caption: ""}
        inside:
          name: Inside
          areas: [all]
          windows: {all: }
          flats:
            inside: {file: inside.svg, role: inside, group: views, ratio: 1, caption: ""}
            label: {file: front.svg, role: detail, caption: ""}
      """;

  @TempDir Path dir;

  private Run fit(String text) throws IOException {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 %1$d'><path d='M0,0H100V%1$dH0Z'/></svg>";
    Files.writeString(dir.resolve("front.svg"), svg.formatted(100));
    Files.writeString(dir.resolve("inside.svg"), svg.formatted(200));
    Path file = Files.writeString(dir.resolve("pack.yaml"), text);
    return Run.of("fit", file, "--overwrite", "--out", dir.resolve("out"));
  }

  /** Millimetres for one drawing unit of a flat. */
  private double scale(String flat) throws IOException {
    JsonNode json = new ObjectMapper().readTree(dir.resolve("out/fit.json").toFile());
    for (JsonNode sheet : json.get("sheets")) {
      for (JsonNode p : sheet.get("placements")) {
        if (p.get("flat").asText().equals(flat)) {
          return p.get("scale").asDouble() * 25.4 / 72;
        }
      }
    }
    throw new AssertionError("no " + flat);
  }

  @Test
  void theSmallestSheetGivesTheScale() throws IOException {
    Run run = fit(TEXT);
    assertEquals(0, run.code(), run.err());
    assertEquals(0.9175, scale("inside"), 1e-6);
    assertEquals(scale("inside"), scale("front"), 0, "one scale, to the last digit");
    assertTrue(run.out().contains("fixed at this scale"), run.out());
  }

  @Test
  void ratiosAreKept() throws IOException {
    fit(
        TEXT.replace(
            "role: front, group: views, ratio: 1", "role: front, group: views, ratio: 1.5"));
    assertEquals(1.5 * scale("inside"), scale("front"), 1e-12);
    assertEquals(0.9175, scale("inside"), 1e-6);
  }

  @Test
  void unaskedEachSheetHasItsOwn() throws IOException {
    fit(TEXT.replace("one-scale: views\n", ""));
    assertEquals(1.835, scale("front"), 1e-6);
    assertEquals(0.9175, scale("inside"), 1e-6);
  }

  @Test
  void aScaleThatIsHeldHoldsOnAllSheets() throws IOException {
    // 2 points to the unit.
    Run run =
        fit(
            TEXT.replace(
                "role: front, group: views", "role: front, held: {scale: 2}, group: views"));
    assertEquals(0, run.code(), run.err());
    assertEquals(2 * 25.4 / 72, scale("inside"), 1e-12);
  }

  @Test
  void aGroupThatNoFlatNamesIsASlip() throws IOException {
    Run run = fit(TEXT.replace("one-scale: views", "one-scale: [views, vews]"));
    assertEquals(2, run.code());
    assertTrue(run.err().contains("line 2, "), run.err());
    assertTrue(run.err().contains("'vews'") && run.err().contains("views"), run.err());
  }
}
