package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.demo.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A pack of too many sheets or rows is refused with the limit's name, and nothing is written. */
class PackLimitsTest {
  @TempDir Path dir;

  private Run fit(int rows, Object... options) throws IOException {
    StringBuilder csv = new StringBuilder("Point,Size\n");
    for (int i = 0; i < rows; i++) {
      csv.append("Row ").append(i).append(",1.5\n");
    }
    Files.writeString(dir.resolve("points.csv"), csv);
    Files.writeString(
        dir.resolve("pack.yaml"),
        """
        format: placket-pack/1
        sheets:
          points:
            name: Points
            areas: [points]
            tables:
              points: {csv: points.csv}
        """);
    Object[] args = new Object[options.length + 3];
    args[0] = "fit";
    args[1] = dir.resolve("pack.yaml");
    args[2] = "--overwrite";
    System.arraycopy(options, 0, args, 3, options.length);
    return Run.of(args);
  }

  /** Rows of 5.5 mm under a heading as high: 33 on the 190 mm between the margins of A4. */
  @Test
  void sheets() throws IOException {
    Run over = fit(34, "--max-sheets", 1);
    assertEquals(2, over.code(), over.err());
    assertTrue(over.err().contains("2 sheets, more than the limit of 1"), over.err());
    assertTrue(over.err().contains("--max-sheets"), over.err());
    assertFalse(Files.exists(dir.resolve("placket")));
    assertEquals(0, fit(33, "--max-sheets", 1).code());
    assertEquals(0, fit(34, "--max-sheets", 2).code());
  }

  @Test
  void rows() throws IOException {
    Run over = fit(11, "--max-rows", 10);
    assertEquals(2, over.code(), over.err());
    assertTrue(over.err().contains("a table of 11 rows"), over.err());
    assertTrue(over.err().contains("--max-rows"), over.err());
    assertEquals(0, fit(10, "--max-rows", 10).code());
  }

  /** The limits if nothing is said: 20,000 rows, and 500 sheets of 33 rows. */
  @Test
  void unasked() throws IOException {
    assertTrue(fit(20_001).err().contains("20000 at most"));
    assertTrue(fit(500 * 33 + 1).err().contains("501 sheets, more than the limit of 500"));
  }

  @Test
  void aLimitIsAboveZero() throws IOException {
    assertEquals(2, fit(1, "--max-sheets", 0).code());
    assertEquals(2, fit(1, "--max-rows", -1).code());
  }
}
