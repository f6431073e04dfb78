package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.FitSchema;
import dev.placket.demo.Run;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The photographs of the demo's second fit: their size, density, ground and numbers. */
class SamplePhotographsTest {
  private static final double MM = 72 / 25.4;
  private static final Path DEMO = Path.of("src", "demo", "mg-3107");

  @TempDir private Path dir;

  private JsonNode placed(String... more) throws IOException {
    List<Object> words =
        new ArrayList<>(List.of("fit", DEMO.resolve("samples.yaml"), "--out", dir.resolve("out")));
    words.addAll(List.of(more));
    Run run = Run.of(words.toArray());
    assertEquals(0, run.code(), run.err());
    String fit = Files.readString(dir.resolve("out/fit.json"));
    assertEquals(List.of(), FitSchema.errors(fit));
    return new ObjectMapper().readTree(fit).at("/sheets/2/placements");
  }

  @Test
  void areLargeEnoughToSee() throws IOException {
    for (JsonNode photograph : placed()) {
      JsonNode ink = photograph.get("inkedBox");
      double longest = Math.max(length(ink, "left", "right"), length(ink, "top", "bottom"));
      assertTrue(longest >= 60 * MM, photograph.toString());
    }
  }

  private static double length(JsonNode box, String from, String to) {
    return box.get(to).asDouble() - box.get(from).asDouble();
  }

  /** The numbers of pixels to the inch are those that poppler's pdfimages lists. */
  @Test
  void haveTheDensityThatIsReported() throws IOException, InterruptedException {
    TreeMap<Integer, Integer> reported = new TreeMap<>();
    for (JsonNode photograph : placed()) {
      reported.put(
          photograph.at("/embedded/width").asInt(),
          (int) Math.round(photograph.at("/density/x").asDouble()));
    }
    TreeMap<Integer, Integer> listed = new TreeMap<>();
    for (String[] row : Poppler.images(dir, dir.resolve("out/MG-3107.pdf"))) {
      listed.put(Integer.valueOf(row[3]), Integer.valueOf(row[12]));
    }
    assertEquals(2, listed.size());
    listed.forEach((width, perInch) -> assertEquals(perInch, reported.get(width), 1));
  }

  /** The numbers in the rings are those of the comments of the file. */
  @Test
  void carryTheNumbersOfTheirComments() throws IOException {
    List<String> marks = new ArrayList<>();
    for (JsonNode photograph : placed()) {
      for (JsonNode callout : photograph.get("callouts")) {
        marks.add(callout.get("callout").asText().replaceAll(".*-", ""));
      }
    }
    assertEquals(List.of("1", "4", "5"), marks.stream().sorted().toList());
  }

  /** The wall behind the coat is grey in the files, and stays so on the page. */
  @Test
  void keepTheirGround() throws IOException {
    JsonNode ink = placed().get(1).get("inkedBox");
    try (PDDocument pdf = Loader.loadPDF(dir.resolve("out/MG-3107.pdf").toFile())) {
      BufferedImage page = new PDFRenderer(pdf).renderImageWithDPI(2, 72);
      int x = (int) (ink.get("left").asDouble() + 6);
      int y = (int) ((ink.get("top").asDouble() + ink.get("bottom").asDouble()) / 2);
      int grey = page.getRGB(x, y) & 0xFF;
      assertTrue(grey > 120 && grey < 235, "" + grey);
    }
  }

  /** A revised value that was taken is a change of the next issue. */
  @Test
  void revisedValuesAreChangesOfTheNextIssue() throws IOException {
    Path style = dir.resolve("style");
    for (String name :
        List.of(
            "samples.yaml",
            "samples.csv",
            "points.csv",
            "photographs/fit-2-cuff.jpg",
            "photographs/fit-2-front.jpg")) {
      Path to = style.resolve(name);
      Files.createDirectories(to.getParent());
      Files.copy(DEMO.resolve(name), to);
    }
    Path pack = style.resolve("samples.yaml");
    assertEquals(0, Run.of("issue", pack).code());
    Run revised = Run.of("revise", pack, "fit-2", "--write");
    assertEquals(0, revised.code(), revised.err());
    Run same = Run.of("issue", pack);
    assertEquals(2, same.code());
    assertTrue(same.err().contains("with other content"), same.err());
    String next = Files.readString(pack).replace("revision: C", "revision: D");
    Files.writeString(pack, next.replace("date: 2027-02-11", "date: 2027-02-15"));
    Run issued = Run.of("issue", pack);
    assertEquals(0, issued.code(), issued.err());
    String changes = issued.out().replaceAll("\\s+", " ");
    assertTrue(changes.contains("Q") && changes.contains("22.4"), changes);
  }

  /** An issue's manifest has every photograph and file of samples that it was made from. */
  @Test
  void anIssueKeepsTheDigestsOfItsSamples() throws IOException {
    Path issues = dir.resolve("issues");
    Run run = Run.of("issue", DEMO.resolve("samples.yaml"), "--out", issues);
    assertEquals(0, run.code(), run.err());
    Path manifest =
        Files.walk(issues)
            .filter(f -> f.toString().endsWith("manifest.json"))
            .findFirst()
            .orElseThrow();
    String text = Files.readString(manifest);
    for (String name : List.of("samples.csv", "points.csv", "photographs/fit-2-front.jpg")) {
      assertTrue(text.contains(name), name);
    }
  }
}
