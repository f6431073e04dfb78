package dev.placket.demo.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.demo.FitSchema;
import dev.placket.demo.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A pack that lost a sheet leaves no preview of it behind, and nothing of anybody else's goes. */
class StaleFilesTest {
  @TempDir private Path dir;
  private Path out;

  private Run fit(int sheets, String... options) throws IOException {
    Files.writeString(
        dir.resolve("front.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 90'>"
            + "<path d='M9 9H80V80H9Z'/></svg>");
    StringBuilder text = new StringBuilder("format: placket-pack/1\nsheets:\n");
    for (int i = 1; i <= sheets; i++) {
      text.append(
          "  s%d:\n    name: Sheet %d\n    areas: [v]\n    windows: {v: }\n".formatted(i, i));
      text.append("    flats: {f%d: {file: front.svg, role: front}}\n".formatted(i));
    }
    Files.writeString(dir.resolve("pack.yaml"), text);
    List<Object> call = new java.util.ArrayList<>(List.of("fit", dir.resolve("pack.yaml")));
    call.addAll(List.of("--out", out));
    call.addAll(List.of(options));
    Run run = Run.of(call.toArray());
    assertEquals(0, run.code(), run.err());
    return run;
  }

  @BeforeEach
  void three() throws IOException {
    out = dir.resolve("out");
    fit(3);
    assertTrue(Files.exists(out.resolve("pack-3.png")));
  }

  @Test
  void whatTheRunDoesNotWriteAgainGoes() throws IOException {
    Files.writeString(out.resolve("notes.txt"), "mine");
    Run run = fit(2, "--overwrite");
    assertFalse(Files.exists(out.resolve("pack-3.png")));
    assertTrue(Files.exists(out.resolve("pack-2.png")));
    assertTrue(Files.exists(out.resolve("notes.txt")));
    assertTrue(run.out().contains("pack-3.png"), run.out());
    assertEquals(List.of(), FitSchema.errors(Files.readString(out.resolve("fit.json"))));
  }

  @Test
  void whatSomebodyPutThereSinceStays() throws IOException {
    Files.writeString(out.resolve("pack-3.png"), "mine");
    Files.setLastModifiedTime(
        out.resolve("pack-3.png"), FileTime.from(Instant.now().plusSeconds(5)));
    fit(2, "--overwrite");
    assertEquals("mine", Files.readString(out.resolve("pack-3.png")));
  }

  @Test
  void aListThatLeadsElsewhereIsNotFollowed() throws IOException {
    Path other = Files.writeString(dir.resolve("other.png"), "mine");
    Path json = out.resolve("fit.json");
    String listed = Files.readString(json);
    assertTrue(listed.contains("\"pack-3.png\""));
    Files.writeString(json, listed.replace("\"pack-3.png\"", "\"../other.png\""));
    fit(2, "--overwrite");
    assertTrue(Files.exists(other));
    assertTrue(Files.exists(out.resolve("pack-3.png")), "it is not listed");
  }

  @Test
  void aDamagedListAndACheckRemoveNothing() throws IOException {
    fit(2, "--check", "--overwrite");
    assertTrue(Files.exists(out.resolve("pack-3.png")));
    Files.writeString(out.resolve("fit.json"), "{\"files\": [\"pack-3.png\"");
    fit(2, "--overwrite");
    assertTrue(Files.exists(out.resolve("pack-3.png")));
  }
}
