package dev.placket.demo.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.FitSchema;
import dev.placket.demo.Run;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One file of each form that has been released: what users have is read by every later version.
 * These files are never changed; a new form gets a new number and a file of its own here.
 */
class ReleasedFormsTest {
  private static final String FOLDER = "/dev/placket/demo/released/";

  @TempDir private Path dir;

  @BeforeEach
  void copy() throws IOException {
    for (String name : new String[] {"placket-pack-1.yaml", "placket-fit-1.json", "front.svg"}) {
      Files.writeString(dir.resolve(name), text(name));
    }
  }

  private static String text(String name) throws IOException {
    try (InputStream in =
        Objects.requireNonNull(ReleasedFormsTest.class.getResourceAsStream(FOLDER + name), name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void aDescriptionOfFormOneIsReadAndFitted() throws IOException {
    Path out = dir.resolve("out");
    Run run = Run.of("fit", dir.resolve("placket-pack-1.yaml"), "--out", out);
    assertEquals(0, run.code(), run.err());
    var before = new ObjectMapper().readTree(text("placket-fit-1.json"));
    var after = new ObjectMapper().readTree(out.resolve("fit.json").toFile());
    assertEquals(before.path("format"), after.path("format"));
    assertEquals(before.at("/pack/styleNumber"), after.at("/pack/styleNumber"));
    assertEquals(before.at("/sheets/0/cells"), after.at("/sheets/0/cells"));
    assertEquals(before.at("/sheets/0/tables"), after.at("/sheets/0/tables"));
  }

  @Test
  void valuesOfFormOneKeepTheirSchemaAndAreCompared() throws IOException {
    Path old = dir.resolve("placket-fit-1.json");
    assertEquals(java.util.List.of(), FitSchema.errors(Files.readString(old)));
    String later = Files.readString(old).replace("\"Fold once across.\"", "\"Fold twice across.\"");
    Path now = Files.writeString(dir.resolve("now.json"), later);
    Run run = Run.of("compare", old, now);
    assertEquals(0, run.code(), run.err());
    assertTrue(
        run.out()
            .contains("row flats, steps, 2, What is done: Fold once across. -> Fold twice across."),
        run.out());
  }

  /** A later form is refused with what was found, and is not taken for this one. */
  @Test
  void aLaterFormIsRefused() throws IOException {
    Path old = dir.resolve("placket-fit-1.json");
    String later = Files.readString(old).replace("placket-fit/1", "placket-fit/2");
    Run run = Run.of("compare", old, Files.writeString(dir.resolve("now.json"), later));
    assertEquals(2, run.code());
    assertTrue(run.err().contains("its format is 'placket-fit/2'"), run.err());
    String pack = text("placket-pack-1.yaml").replace("placket-pack/1", "placket-pack/2");
    Run fit = Run.of("fit", Files.writeString(dir.resolve("two.yaml"), pack), "--check");
    assertEquals(2, fit.code());
    assertTrue(fit.err().contains("placket-pack/2"), fit.err());
    assertFalse(Files.exists(dir.resolve("out")));
  }

  /** Fields of a probe are added to, never taken away or renamed. */
  @Test
  void aProbeHasAllFieldsOfFormOne() throws IOException {
    Run run = Run.of("probe", dir.resolve("front.svg"), "--json");
    assertEquals(0, run.code(), run.err());
    ObjectMapper mapper = new ObjectMapper();
    String missing =
        missing("", mapper.readTree(text("placket-probe-1.json")), mapper.readTree(run.out()));
    assertEquals("", missing);
  }

  /** The first field that a value lacks. */
  private static String missing(
      String at,
      com.fasterxml.jackson.databind.JsonNode before,
      com.fasterxml.jackson.databind.JsonNode after) {
    if (before.isObject()) {
      for (var field : before.properties()) {
        String path = at + "/" + field.getKey();
        if (!after.has(field.getKey())) {
          return path;
        }
        String inner = missing(path, field.getValue(), after.get(field.getKey()));
        if (!inner.isEmpty()) {
          return inner;
        }
      }
    } else if (before.isArray() && !before.isEmpty()) {
      return missing(at + "/0", before.get(0), after.path(0));
    }
    return "";
  }
}
