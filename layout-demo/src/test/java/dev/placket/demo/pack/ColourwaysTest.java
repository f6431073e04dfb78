package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.Run;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Colourways of one drawing stand in the order of the description: above or left of those that
 * follow. A misordered colourway is a production error.
 */
class ColourwaysTest {
  @TempDir private Path dir;

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void standInTheOrderOfTheDescription(int seed) throws Exception {
    Random random = new Random(seed);
    int count = 3 + seed % 3;
    Files.writeString(
        dir.resolve("coat.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 110'><path id='shell'"
            + " d='M9 9H80V99H9Z' fill='#fff' stroke='#000'/></svg>");
    StringBuilder text = new StringBuilder("format: placket-pack/1\npaper: A4");
    text.append(seed % 2 == 0 ? " portrait" : "").append("\nsheets:\n  ways:\n    name: Ways\n");
    text.append("    areas: [w]\n    windows: {w: }\n    rules: {front-before-back: false}\n");
    text.append("    flats:\n");
    for (int i = 1; i <= count; i++) {
      // Captions of many widths and heights, so that any order may be the largest.
      String caption = "K" + i + " " + "x".repeat(1 + random.nextInt(30));
      String note = "note\\n".repeat(random.nextInt(6));
      text.append(
          "      k%d: {file: coat.svg, role: front, share: 1, caption: %s, note: \"%s\","
                  .formatted(i, caption, note)
              + " fills: {shell: \"#8A7F7%d\"}}\n".formatted(i));
    }
    Path pack = dir.resolve("pack.yaml");
    Files.writeString(pack, text);
    Run run = Run.of("fit", pack, "--out", dir.resolve("out"), "--json");
    assertEquals(0, run.code(), run.err());
    JsonNode placed = new ObjectMapper().readTree(run.out()).at("/sheets/0/placements");
    assertEquals(count, placed.size());
    for (int later = 1; later < count; later++) {
      for (int first = 0; first < later; first++) {
        JsonNode a = placed.get(first).path("footprint");
        JsonNode b = placed.get(later).path("footprint");
        boolean above = edge(a, "bottom") <= edge(b, "top");
        boolean left = edge(a, "right") <= edge(b, "left") && edge(b, "bottom") > edge(a, "top");
        assertTrue(above || left, "k" + (first + 1) + " and k" + (later + 1) + " of " + seed);
      }
    }
  }

  /** To a thousandth of a point. */
  private static long edge(JsonNode box, String name) {
    return Math.round(box.path(name).asDouble() * 1000);
  }
}
