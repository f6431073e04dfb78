package dev.placket.benchmarks.drawings;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;

/**
 * The answers to all drawings of a folder.
 *
 * @param folder the folder
 * @param runs one for each drawing, at least one
 * @param most the seconds that one command may take
 */
public record DrawingRuns(String folder, List<DrawingRun> runs, double most) {
  /** The heading of {@link #row}. */
  public static final String HEAD =
      """
      | folder | drawings | placed | no room | refused | disagreed | crashed | out of memory \
      | too slow | longest |
      |---|---|---|---|---|---|---|---|---|---|""";

  /** Copies the list. */
  public DrawingRuns {
    runs = List.copyOf(runs);
  }

  /** Whether nothing is wrong with any. */
  public boolean sound() {
    return runs.stream().allMatch(r -> r.sound(most));
  }

  /** One row of the table. */
  public String row() {
    DrawingRun slowest =
        runs.stream().max(Comparator.comparingDouble(DrawingRun::seconds)).orElseThrow();
    return String.format(
        Locale.ROOT,
        "| %s | %d | %d | %d | %d | %d | %d | %d | %d | %.2f s (%s) |",
        folder,
        runs.size(),
        count(DrawingRun::placed),
        count(DrawingRun::noRoom),
        count(DrawingRun::refused),
        count(DrawingRun::disagreed),
        count(DrawingRun::crashed),
        count(DrawingRun::outOfMemory),
        count(r -> r.seconds() > most),
        slowest.seconds(),
        slowest.file());
  }

  private long count(Predicate<DrawingRun> what) {
    return runs.stream().filter(what).count();
  }
}
