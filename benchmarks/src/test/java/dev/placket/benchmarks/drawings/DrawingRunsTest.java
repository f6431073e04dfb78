package dev.placket.benchmarks.drawings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.benchmarks.outside.PlacketJars;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How answers are judged, by the exit codes of README. */
class DrawingRunsTest {
  private static DrawingRun run(int probe, int fit, double seconds) {
    return new DrawingRun(
        "a.svg",
        new PlacketJars.Ended(probe, 0.1, ""),
        new PlacketJars.Ended(fit, seconds, "placket: a.svg: is blank"));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, 1, true",
    "0, 3, 1, true",
    "0, 4, 1, true",
    "2, 2, 1, true",
    "0, 0, 6, false",
    "0, 2, 1, false",
    "2, 0, 1, false",
    "2, 4, 1, false",
    "1, 2, 1, false",
    "0, 1, 1, false"
  })
  void whatIsSound(int probe, int fit, double seconds, boolean sound) {
    assertEquals(sound, run(probe, fit, seconds).sound(5));
  }

  @Test
  void memoryThatRanOutIsNotSound() {
    DrawingRun out =
        new DrawingRun(
            "a.svg",
            new PlacketJars.Ended(
                2, 1, "a.svg: takes more memory than the 256 MiB that Java may use;"),
            new PlacketJars.Ended(2, 1, ""));
    assertTrue(out.outOfMemory());
    assertFalse(out.sound(5));
  }

  @Test
  void theTableCountsEachKind() {
    List<DrawingRun> runs =
        List.of(
            run(0, 0, 1), run(0, 3, 2), run(0, 4, 3), run(2, 2, 1), run(0, 2, 1), run(1, 1, 7.5));
    assertEquals(
        "| svg | 6 | 2 | 1 | 1 | 1 | 1 | 0 | 1 | 7.50 s (a.svg) |",
        new DrawingRuns("svg", runs, 5).row());
    assertFalse(new DrawingRuns("svg", runs, 5).sound());
    assertTrue(new DrawingRuns("svg", runs.subList(0, 4), 5).sound());
  }
}
