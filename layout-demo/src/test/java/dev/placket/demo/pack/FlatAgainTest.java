package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One flat on two sheets under one identifier. */
class FlatAgainTest {
  private static final String TEXT =
      """
      format: placket-pack/1
      sheets:
        one:
          name: One
          areas: [all]
          windows: {all: }
          flats:
            front: {file: coat.svg, role: front, unit: 1mm, caption: Coat, greatest: 50mm, note: closed}
        two:
          name: Two
          areas: [all]
          windows: {all: }
          flats:
            front: {%s}
      """;

  @TempDir private Path dir;

  private Run run(String second) throws IOException {
    Files.writeString(
        dir.resolve("coat.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 110'><path id='shell'"
            + " d='M9 9H80V99H9Z' fill='#fff' stroke='#000'/></svg>");
    Path pack = Files.writeString(dir.resolve("pack.yaml"), TEXT.formatted(second));
    return Run.of("fit", pack, "--out", dir.resolve("out"), "--overwrite");
  }

  private JsonNode placement(int sheet) throws IOException {
    return new ObjectMapper()
        .readTree(dir.resolve("out/fit.json").toFile())
        .at("/sheets/" + sheet + "/placements/0");
  }

  @Test
  void whatALaterSheetDoesNotStateIsAsTheFirstHasIt() throws IOException {
    Run run = run("note: open");
    assertEquals(0, run.code(), run.err());
    assertEquals("front", placement(0).path("flat").asText());
    assertEquals("front-two", placement(1).path("flat").asText());
    assertEquals(lines("Coat", "closed"), words(placement(0)));
    assertEquals(lines("Coat", "open"), words(placement(1)));
    assertEquals(placement(0).path("digest"), placement(1).path("digest"));
    // Its greatest size belongs to the first sheet alone.
    assertTrue(placement(1).path("scale").asDouble() > 2 * placement(0).path("scale").asDouble());
  }

  private static List<String> lines(String... lines) {
    return List.of(lines);
  }

  private static List<String> words(JsonNode placement) {
    List<String> lines = new ArrayList<>();
    placement.path("lines").forEach(l -> lines.add(l.asText()));
    return lines.subList(0, 2);
  }

  @Test
  void slipsNameTheLineOfTheLaterSheet() throws IOException {
    Run run = run("level: cuff");
    assertEquals(2, run.code());
    assertTrue(run.err().contains("line 14, ") && run.err().contains("cuff"), run.err());
  }

  @Test
  void aFlatWithAFileOfItsOwnNeedsAnIdentifierOfItsOwn() throws IOException {
    Run run = run("file: coat.svg, role: front");
    assertEquals(2, run.code());
    assertTrue(run.err().contains("the flat 'front' again"), run.err());
  }

  @Test
  void withoutAFileItHasToBeOnAnEarlierSheet() throws IOException {
    Run run = run("note: open}\n      back: {note: open");
    assertEquals(2, run.code());
    assertTrue(run.err().contains("flat back without file"), run.err());
  }
}
