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
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Drawings go down to round scales, and only round ones are printed. */
class RoundScalesTest {
  /**
   * ISO 5455: 1:1, 1:2, 1:5, 1:10, 1:20, 1:50 and enlargements (from memory); between them 1:2.5,
   * 1:4, 1:8, 1:12, 1:15 and 1:25, common practice for garments. As what stands after the colon.
   */
  private static final List<Double> SERIES =
      List.of(
          0.1, 0.2, 0.25, 0.4, 0.5, 1.0, 2.0, 2.5, 4.0, 5.0, 8.0, 10.0, 12.0, 15.0, 20.0, 25.0,
          50.0);

  private static final String TEXT =
      """
      format: placket-pack/1
      %s
      sheets:
        flats:
          name: Flats
          areas: [all]
          windows: {all: }
          flats:
            front: {file: coat.svg, role: front, group: coat, ratio: 1, unit: 10mm, caption: Front}
            back: {file: coat.svg, role: back, group: coat, ratio: 1, unit: 10mm, caption: Back}
            pocket: {file: coat.svg, role: detail, unit: 2.3mm, caption: Pocket}
            tab: {file: coat.svg, role: detail, unit: 0.7mm, caption: Tab}
            free: {file: coat.svg, role: detail, caption: Sketch}
      """;

  @TempDir private Path dir;

  private Run run(String key) throws IOException {
    Files.writeString(
        dir.resolve("coat.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 110'><path id='shell'"
            + " d='M9 9H80V99H9Z' fill='#fff' stroke='#000'/></svg>");
    Path pack = Files.writeString(dir.resolve("pack.yaml"), TEXT.formatted(key));
    return Run.of("fit", pack, "--out", dir.resolve("out"), "--overwrite");
  }

  /** What stands after the colon of 1:n, for each flat of a stated unit. */
  private Map<String, Double> scales() throws IOException {
    Map<String, Double> scales = new TreeMap<>();
    JsonNode json = new ObjectMapper().readTree(dir.resolve("out/fit.json").toFile());
    for (JsonNode p : json.at("/sheets/0/placements")) {
      if (p.path("garmentScale").isNumber()) {
        scales.put(p.path("flat").asText(), 1 / p.path("garmentScale").asDouble());
      }
    }
    return scales;
  }

  private static double nextSmaller(double free) {
    return SERIES.stream().filter(n -> n >= free * (1 - 2e-5)).findFirst().orElseThrow();
  }

  @Test
  void viewsGoDownToTheNextRoundScale() throws IOException {
    assertEquals(0, run("").code());
    Map<String, Double> free = scales();
    Run run = run("round-scales: {most: 60%}");
    assertEquals(0, run.code(), run.err());
    Map<String, Double> round = scales();
    assertEquals(4, round.size());
    assertEquals(nextSmaller(free.get("front")), round.get("front"), 1e-6);
    // One scale group: the back keeps its ratio of 1.
    assertEquals(round.get("front"), round.get("back"), 1e-6);
    for (String detail : List.of("pocket", "tab")) {
      double its = round.get(detail);
      assertTrue(SERIES.stream().anyMatch(n -> Math.abs(n - its) < 1e-6 * n), detail + " 1:" + its);
    }
    assertTrue(run.out().contains("round scales: front 1:"), run.out());
  }

  @Test
  void whatGivesUpTooMuchStaysAndPrintsNoFigure() throws IOException {
    assertEquals(0, run("").code());
    double free = scales().get("front");
    String printed = "1:" + String.format(java.util.Locale.ROOT, "%.1f", free);
    assertTrue(text().contains(printed), text());
    // Half of the scale would have to go, of which no more than a fifth may.
    Run run = run("round-scales: {series: [\"1:%d\", \"5:1\"]}".formatted((int) (2 * free)));
    assertEquals(0, run.code(), run.err());
    assertEquals(free, scales().get("front"), 1e-6);
    assertFalse(text().contains(printed), text());
    assertTrue(run.out().contains("front: no round scale under " + printed), run.out());
  }

  @Test
  void aSeriesOfTheLabelTakesThePlaceOfTheStandard() throws IOException {
    Run run = run("round-scales: {series: [\"1:7\", \"1:9\", \"1:3\", \"1:0.6\"], most: 80%}");
    assertEquals(0, run.code(), run.err());
    scales()
        .forEach(
            (flat, n) ->
                assertTrue(
                    List.of(7.0, 9.0, 3.0, 0.6).stream().anyMatch(r -> Math.abs(r - n) < 1e-6 * r),
                    flat + " 1:" + n));
  }

  /** Nothing is claimed of a size that is fixed. */
  @Test
  void theReportClaimsTheLargestOnlyOfWhatMayGrow() throws IOException {
    Run run = run("round-scales: {most: 60%}");
    String said = run.out().replaceAll("\\s+", " ");
    assertTrue(said.contains("as this sheet is ruled, beside flats of fixed scale."), said);
  }

  @Test
  void slipsAreAnswered() throws IOException {
    Run scale = run("round-scales: {series: [0.1]}");
    assertEquals(2, scale.code());
    assertTrue(scale.err().contains("the scale '0.1'"), scale.err());
    Run most = run("round-scales: {most: 0%}");
    assertEquals(2, most.code());
    assertTrue(most.err().contains("a share of the scale, as in 20%"), most.err());
  }

  private String text() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(dir.resolve("out/pack.pdf").toFile())) {
      return new PDFTextStripper().getText(pdf);
    }
  }

  /** The back comes first and is smaller: it is the front whose scale is round. */
  @Test
  void theFrontLeadsItsGroup() throws IOException {
    Path pack = dir.resolve("pack.yaml");
    run("");
    String text = Files.readString(pack);
    String back = text.lines().filter(l -> l.contains(" back:")).findFirst().orElseThrow() + "\n";
    String first = "    flats:\n";
    int at = text.lastIndexOf(first) + first.length();
    text = text.replace(back, "");
    text = text.substring(0, at) + back.replace("ratio: 1", "ratio: 0.85") + text.substring(at);
    Files.writeString(pack, "round-scales: {most: 60%}\n" + text);
    Run run = Run.of("fit", pack, "--out", dir.resolve("out"), "--overwrite");
    assertEquals(0, run.code(), run.err());
    double front = scales().get("front");
    assertTrue(SERIES.stream().anyMatch(n -> Math.abs(n - front) < 1e-6 * n), "1:" + front);
    assertEquals(front / 0.85, scales().get("back"), 1e-6);
  }

  /** Labels beside the views stand at a round scale as they do at the largest. */
  @Test
  void calloutsAreDrawnAtRoundScales() throws IOException {
    run("");
    Path pack = dir.resolve("pack.yaml");
    StringBuilder points = new StringBuilder(", points: {");
    StringBuilder callouts = new StringBuilder(", callouts: {");
    for (int i = 0; i < 9; i++) {
      points.append("p%d: {x: %d, y: %d}, ".formatted(i, 12 + i * 7 % 60, 14 + 9 * i));
      callouts.append("c%d: {point: p%d, text: \"Note number %d\"}, ".formatted(i, i, i));
    }
    String front = "caption: Front" + points + "}" + callouts + "}";
    String text = Files.readString(pack).replace("caption: Front", front.replace(", }", "}"));
    Files.writeString(pack, "round-scales: {most: 60%}\n" + text);
    Run run = Run.of("fit", pack, "--out", dir.resolve("out"), "--overwrite");
    assertEquals(0, run.code(), run.err());
    double its = scales().get("front");
    assertTrue(SERIES.stream().anyMatch(n -> Math.abs(n - its) < 1e-6 * n), "1:" + its);
    JsonNode json = new ObjectMapper().readTree(dir.resolve("out/fit.json").toFile());
    assertEquals(9, json.at("/sheets/0/placements/0/callouts").size());
  }

  /** A scale of the label's own series is printed whole: 1:8.75 is not 1:8.8. */
  @Test
  void aRoundScaleIsPrintedWithAllItsFigures() throws IOException {
    Run run = run("round-scales: {series: [\"1:8.75\", \"1:4.25\", \"1:2.125\"], most: 60%}");
    assertEquals(0, run.code(), run.err());
    assertEquals(8.75, scales().get("front"), 1e-6);
    assertTrue(text().contains("1:8.75"), text());
    assertFalse(text().contains("1:8.8"), text());
  }
}
