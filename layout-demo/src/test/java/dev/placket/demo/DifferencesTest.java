package dev.placket.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A picture that is drawn other than its file says: where it is said, and what --strict does. */
class DifferencesTest {
  private static final String GOOD =
      "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 100'>"
          + "<rect x='10' y='10' width='70' height='80' fill='none' stroke='#000'/></svg>";

  /** No typeface of this family is given, so that its text comes out in another. */
  private static final String LETTERED =
      GOOD.replace(
          "</svg>",
          "<text x='20' y='50' font-family='Nowhere Grotesk' font-size='9'>Hood</text></svg>");

  @TempDir Path dir;
  private Path flats;
  private Path out;

  @BeforeEach
  void folders() throws IOException {
    flats = Files.createDirectory(dir.resolve("style"));
    out = dir.resolve("made");
    Files.writeString(flats.resolve("front.svg"), LETTERED);
    Files.writeString(flats.resolve("back.svg"), LETTERED);
    Files.writeString(flats.resolve("side.svg"), GOOD);
  }

  @Test
  void itStandsBesideThePictureAndBeforeAllElse() throws IOException {
    Run run = Run.of("fit", flats, "--out", out);
    assertEquals(0, run.code(), run.err());
    String said = run.out().replaceAll("\\s+", " ");
    assertEquals(3, said.split("Not as in the file: ", -1).length, "once for each of two: " + said);
    int next = said.indexOf("What to do next 1. front.svg, back.svg: ");
    assertTrue(next > 0, said);
    assertTrue(said.substring(next).contains("Nowhere Grotesk"), said);
    String page = Files.readString(out.resolve("style-report.html"));
    assertTrue(page.contains("<ol>\n<li>front.svg, back.svg: "), page);
    assertEquals(3, page.split("<li class=\"changed\">", -1).length);
  }

  @Test
  void itStandsInTheNumbers() throws IOException {
    Run run = Run.of("fit", flats, "--out", out, "--json");
    assertEquals(List.of(), FitSchema.errors(run.out()));
    JsonNode placements =
        new ObjectMapper().readTree(run.out()).path("sheets").get(0).path("placements");
    for (JsonNode p : placements) {
      boolean lettered = !p.path("source").asText().equals("side.svg");
      assertEquals(lettered ? 1 : 0, p.path("drawnDifferently").size(), p::toString);
      assertEquals(p.path("notes"), p.path("drawnDifferently"), p::toString);
    }
    Run probe = Run.of("probe", flats.resolve("front.svg"), flats.resolve("side.svg"), "--json");
    JsonNode files = new ObjectMapper().readTree(probe.out()).path("files");
    assertEquals(1, files.get(0).path("drawnDifferently").size(), probe.out());
    assertEquals(0, files.get(1).path("drawnDifferently").size(), probe.out());
  }

  @Test
  void strictRefusesAndNamesAllOfThem() {
    Run fit = Run.of("fit", flats, "--out", out, "--strict");
    assertRefused(fit);
    Run prepare =
        Run.of(
            "prepare",
            flats.resolve("front.svg"),
            flats.resolve("side.svg"),
            flats.resolve("back.svg"),
            "--at",
            "100mm",
            "--out",
            out,
            "--strict");
    assertRefused(prepare);
    Run probe = Run.of("probe", flats.resolve("front.svg"), flats.resolve("back.svg"), "--strict");
    assertRefused(probe);
  }

  private void assertRefused(Run run) {
    assertEquals(2, run.code(), run.err());
    List<String> lines = run.err().lines().toList();
    assertEquals(2, lines.size(), run.err());
    assertTrue(lines.get(0).startsWith("placket: " + flats.resolve("front.svg") + ": "), run.err());
    assertTrue(lines.get(1).startsWith("placket: " + flats.resolve("back.svg") + ": "), run.err());
    assertFalse(Files.exists(out.resolve("fit.json")));
    assertFalse(Files.exists(out.resolve("side.png")), "nothing is written");
  }

  @Test
  void strictTakesWhatIsDrawnAsItsFileSays() throws IOException {
    Files.writeString(flats.resolve("front.svg"), GOOD);
    Files.writeString(flats.resolve("back.svg"), GOOD);
    assertEquals(0, Run.of("fit", flats, "--out", out, "--strict").code());
    Path front = flats.resolve("front.svg");
    assertEquals(0, Run.of("probe", front, "--strict").code());
    Path ready = dir.resolve("ready");
    Run run = Run.of("prepare", front, "--at", "100mm", "--out", ready, "--strict");
    assertEquals(0, run.code(), run.err());
  }

  @Test
  void aPreparedCopySaysItToo() {
    Run run =
        Run.of("prepare", flats.resolve("front.svg"), "--at", "100mm", "--out", dir.resolve("r"));
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("Not as in the file: "), run.out());
  }

  /** Fifteen drawings with lines too fine are one step, not fifteen. */
  @Test
  void ofManyPicturesOfOneKindOneLineNamesTheWorst() throws IOException {
    for (int i = 1; i <= 15; i++) {
      String fine =
          GOOD.replace("<rect", "<rect stroke-width='0.0" + (i < 10 ? "0" : "") + i + "'");
      Files.writeString(flats.resolve("pocket" + i + "-detail.svg"), fine);
    }
    Run run = Run.of("fit", flats, "--out", out);
    String said = run.out().substring(run.out().indexOf("What to do next")).replaceAll("\\s+", " ");
    assertEquals(2, said.split("break up", -1).length, said);
    assertTrue(said.contains("draw them wider: pocket1-detail.svg ("), said);
    assertTrue(said.contains(" and 11 more."), said);
    assertFalse(said.contains(" 7. "), said);
  }
}
