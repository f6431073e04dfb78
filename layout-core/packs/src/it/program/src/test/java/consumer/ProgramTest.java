package consumer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A pack from a program, without the command. */
class ProgramTest {
  @TempDir Path dir;

  @Test
  void makesAPdf() throws Exception {
    Path flats = Files.createDirectory(dir.resolve("coat"));
    Files.writeString(
        flats.resolve("front.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' width='200' height='300' viewBox='0 0 200 300'>"
            + "<path d='M20 30H120V230H20Z' fill='none' stroke='black'/></svg>");
    Path out = dir.resolve("out");
    String json = new String(Program.make(flats, out), StandardCharsets.UTF_8);
    assertEquals("%PDF", Files.readString(out.resolve("coat.pdf"), StandardCharsets.ISO_8859_1).substring(0, 4));
    assertTrue(json.contains("\"front\""), json);
  }
}
