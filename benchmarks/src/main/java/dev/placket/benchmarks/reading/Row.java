package dev.placket.benchmarks.reading;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One line of the table.
 *
 * @param what what was measured
 * @param here microseconds here
 * @param yardstick microseconds of the yardstick, or null if it is not installed
 * @param against what the yardstick is
 * @param aim the most that the ratio should be
 */
public record Row(
    String what, double here, @Nullable Double yardstick, String against, double aim) {
  /** The line, in Markdown; a ratio over its aim is marked as lost. */
  public String line() {
    Double y = yardstick;
    if (y == null) {
      return String.format(
          Locale.ROOT, "| %s | %.1f µs | %s: not installed | | %.2f | |", what, here, against, aim);
    }
    return String.format(
        Locale.ROOT,
        "| %s | %.1f µs | %s %.1f µs | %.3f | %.2f | %s |",
        what,
        here,
        against,
        y,
        here / y,
        aim,
        here / y <= aim ? "" : "**lost**");
  }
}
