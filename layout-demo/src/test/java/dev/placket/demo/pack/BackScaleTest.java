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
 * The scale of the back on a folder's sheet. The window of A4 is 277 by some 160 mm: two tall views
 * are limited by its height, two wide ones by its width.
 */
class BackScaleTest {
  @TempDir Path dir;

  private void draw(String name, int width, int height) throws IOException {
    Files.writeString(
        dir.resolve(name + ".svg"),
        String.format(
            "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 %d %d'>"
                + "<rect x='5' y='5' width='%d' height='%d' fill='none' stroke='#000'/></svg>",
            width + 10, height + 10, width, height));
  }

  private double backOverFront() throws IOException {
    Run run = Run.of("fit", dir, "--overwrite");
    assertEquals(0, run.code(), run.out() + run.err());
    JsonNode fit = new ObjectMapper().readTree(dir.resolve("placket/fit.json").toFile());
    JsonNode placements = fit.at("/sheets/0/placements");
    double front = 0;
    double back = 0;
    for (JsonNode p : placements) {
      front = p.path("flat").asText().equals("front") ? p.path("scale").asDouble() : front;
      back = p.path("flat").asText().equals("back") ? p.path("scale").asDouble() : back;
    }
    return back / front;
  }

  @Test
  void tallViewsShareOneScaleBecauseItCostsNothing() throws IOException {
    draw("front", 60, 100);
    draw("back", 60, 100);
    assertEquals(1, backOverFront(), 1e-9);
  }

  /** At one scale each has (277 - 14) / 2 mm, at 0.85 the front has 142 mm: 7.5 % more. */
  @Test
  void wideViewsKeepTheRatioOfTheirRole() throws IOException {
    draw("front", 100, 60);
    draw("back", 100, 60);
    assertEquals(0.85, backOverFront(), 1e-9);
  }

  @Test
  void aStatedRatioIsTakenInstead() throws IOException {
    draw("front", 100, 60);
    draw("back", 100, 60);
    Files.writeString(dir.resolve("pack.properties"), "ratio=0.7\n");
    assertEquals(0.7, backOverFront(), 1e-9);
  }

  @Test
  void aRatioAboveOneIsRefused() throws IOException {
    draw("front", 100, 60);
    Files.writeString(dir.resolve("pack.properties"), "ratio=1.2\n");
    Run run = Run.of("fit", dir);
    assertEquals(2, run.code());
    assertTrue(run.err().contains("ratio=1.2"), run.err());
  }
}
