package dev.placket.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BenchmarksTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    return Benchmarks.line(new PrintWriter(out, true), new PrintWriter(err, true)).execute(args);
  }

  @Test
  void printsTheColumnsOneSheetALine(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("one.json");
    // By hand: one square of 10 in a free room of 80 by 60 comes out at scale 6.
    Files.writeString(
        file,
        """
        [{"id":"one","width":100,"height":80,"margin":10,"gap":4,"labelled":[],"flats":[[10,10]]}]
        """);
    assertEquals(0, run("sheets", file.toString(), "--steps", "2000"), err.toString());
    String[] lines = out.toString().split("\\R");
    assertEquals(
        "id\tflats\tscale\tbound\tproven\tms1pct\tmsBest\tmsProof\tsteps\tviolation", lines[0]);
    String[] cells = lines[1].split("\t");
    assertEquals(2, lines.length);
    assertEquals(10, cells.length);
    assertEquals("one", cells[0]);
    assertEquals("1", cells[1]);
    assertEquals(6, Double.parseDouble(cells[2]), 1e-4);
    assertEquals(6, Double.parseDouble(cells[3]), 1e-4);
    assertEquals("0", cells[9]);
  }

  @Test
  void endsWithOneLineOnBadInput() {
    assertEquals(2, run("sheets", "nowhere.json"));
    assertEquals(1, err.toString().lines().count(), err.toString());
    assertTrue(out.toString().isEmpty(), out.toString());
  }

  @Test
  void refusesABudgetOfNothing() {
    assertEquals(2, run("sheets", "pages", "--steps", "0"));
    assertTrue(err.toString().contains("--steps is above zero, not 0"), err.toString());
  }

  @Test
  void theRefereeFindsNothingInRandomSheets() {
    assertEquals(0, run("random", "--count", "400"), out.toString());
    assertTrue(out.toString().contains("400 sheets"), out.toString());
  }
}
