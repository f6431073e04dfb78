package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.demo.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The starter runs as it is, on either side of the ocean, and overwrites nothing. */
class StarterTest {
  @TempDir Path dir;

  @Test
  void runsAsItIs() {
    assertEquals(0, Run.of("starter", dir.resolve("style")).code());
    Path pack = dir.resolve("style/pack.yaml");
    Run fit = Run.of("fit", pack, "--out", dir.resolve("a4"));
    assertEquals(0, fit.code(), fit.err());
    assertTrue(Files.exists(dir.resolve("a4/AB-0001.pdf")));
    Run letter = Run.of("fit", pack, "--paper", "Letter", "--out", dir.resolve("letter"));
    assertEquals(0, letter.code(), letter.err());
  }

  @Test
  void overwritesNothingUnasked() throws IOException {
    Files.writeString(dir.resolve("pack.yaml"), "mine");
    Run again = Run.of("starter", dir);
    assertEquals(2, again.code());
    assertTrue(again.err().contains("pack.yaml: already exists"), again.err());
    assertEquals("mine", Files.readString(dir.resolve("pack.yaml")));
    assertTrue(Files.notExists(dir.resolve("front.svg")));
    assertEquals(0, Run.of("starter", dir, "--overwrite").code());
  }
}
