package dev.placket.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Drawings out of all proportion are probed and placed, or refused by both with one message. */
class OddDrawingsTest {
  private static final Pattern SIZE = Pattern.compile("Front view +front +([0-9.]+) × ([0-9.]+)");

  @TempDir Path dir;

  /**
   * The view, the path and its stroke; then width over height of the ink by hand, or what the
   * refusal says. Ink reaches half a stroke beyond the path.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0 0 1000 1 | M0 .5H1000 | .2 | 5000",
        "0 0 100000 1 | M0 .5H100000 | .2 | 500000",
        "0 0 1 1000 | M.5 0V1000 | .2 | .0002",
        "0 0 1e-9 1e-9 | M1e-10 1e-10H9e-10V9e-10H1e-10z | 1e-11 | 1",
        "0 0 1e9 1e9 | M1e8 1e8H9e8V9e8H1e8z | 1e6 | 1",
        "-500 -500 100 100 | M-490 -490H-410V-410H-490z | 1 | 1",
        "-9e5 9e5 100 100 | M-899990 900010h80v40h-80z | 2 | 1.952381",
        "0 0 90 90 | M10 10H80M10 45H80 | 2 | 1.891892",
        "0 0 90 90 | M10 10H80 | 1e-4 | 700000",
        "0 0 90 90 | M10 10 | 2 | draws nothing",
        "0 0 90 90 | M10 10H80 | 0 | draws nothing",
        "0 0 0 0 | M1 1H8 | 1 | viewBox",
        "'' | M1 1H8 | 1 | viewBox",
        "0 0 -9 9 | M1 1H8 | 1 | viewBox",
        "0 0 NaN 9 | M1 1H8 | 1 | viewBox",
        "0 0 1e39 1e39 | M1e38 1e38H9e38 | 1e36 | front.svg",
      })
  void isPlacedOrRefused(String view, String path, String stroke, String expected)
      throws IOException {
    Path flats = Files.createDirectory(dir.resolve("style"));
    Path front =
        Files.writeString(
            flats.resolve("front.svg"),
            "<svg xmlns='http://www.w3.org/2000/svg' viewBox='%s'><path d='%s' fill='none'"
                    .formatted(view, path)
                + " stroke='#000' stroke-width='%s'/></svg>".formatted(stroke));
    Run probe = Run.of("probe", front);
    Run fit = Run.of("fit", flats);
    assertEquals(probe.code(), fit.code(), probe.err() + fit.err());
    if (!Character.isLetter(expected.charAt(0))) {
      assertEquals(0, fit.code(), fit.err());
      Matcher size = SIZE.matcher(fit.out());
      assertTrue(size.find(), fit.out());
      double width = Double.parseDouble(size.group(1));
      double height = Double.parseDouble(size.group(2));
      double ratio = Double.parseDouble(expected);
      // Printed to a tenth of a millimetre.
      assertEquals(
          0,
          Math.min(Math.abs(width - height * ratio) / ratio, Math.abs(width - height * ratio)),
          0.11,
          fit.out());
    } else {
      assertEquals(2, fit.code(), fit.out());
      assertEquals(1, fit.err().lines().count(), fit.err());
      assertTrue(fit.err().contains(expected), fit.err());
    }
  }

  /** The size that the file states does not matter: the drawing is scaled to the sheet. */
  @ParameterizedTest
  @CsvSource({".01mm", "1e-6in", "100000mm"})
  void theStatedSizeIsNoObstacle(String side) throws IOException {
    Path flats = Files.createDirectory(dir.resolve("style"));
    Files.writeString(
        flats.resolve("front.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' width='%1$s' height='%1$s' viewBox='0 0 9 9'>"
                .formatted(side)
            + "<path d='M1 1H8V8H1z' fill='none' stroke='#000'/></svg>");
    Run fit = Run.of("fit", flats);
    assertEquals(0, fit.code(), fit.err());
    assertTrue(SIZE.matcher(fit.out()).find(), fit.out());
  }

  /** IEEE 754: single precision has steps of 8 at 1e8, and of 1/16 at 1e6. */
  @ParameterizedTest
  @CsvSource({"1e8, true", "1e6, true", "1e5, false", "-1e8, true", "0, false"})
  void pointsThatAreRoundedAreNoted(String from, boolean noted) throws IOException {
    long x = (long) Double.parseDouble(from);
    Path front =
        Files.writeString(
            dir.resolve("front.svg"),
            "<svg xmlns='http://www.w3.org/2000/svg' viewBox='%1$d %1$d 100 100'>".formatted(x)
                + "<path d='M%1$d %1$dh80v80z' fill='none' stroke='#000'/></svg>"
                    .formatted(x + 10));
    Run probe = Run.of("probe", front);
    assertEquals(0, probe.code(), probe.err());
    assertEquals(noted, probe.out().contains("so far from the origin"), probe.out());
  }
}
