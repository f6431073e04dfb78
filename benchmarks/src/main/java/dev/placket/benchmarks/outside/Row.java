package dev.placket.benchmarks.outside;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One line of a table.
 *
 * @param what what was measured
 * @param here the figure here
 * @param unit of both figures
 * @param yardstick the figure of the yardstick, or null if it is not installed
 * @param against what the yardstick is
 * @param aim the most that the ratio should be; infinite if it is told for comparison only
 */
public record Row(
    String what, double here, String unit, @Nullable Double yardstick, String against, double aim) {
  /** What stands over the lines. */
  public static final String HEAD =
      "| what | here | yardstick | ratio | aim | |\n|---|---|---|---|---|---|";

  /** Microseconds. */
  public static Row time(
      String what, double here, @Nullable Double yardstick, String against, double aim) {
    return new Row(what, here, "µs", yardstick, against, aim);
  }

  /** Bytes. */
  public static Row bytes(
      String what, double here, @Nullable Double yardstick, String against, double aim) {
    return new Row(what, here, "bytes", yardstick, against, aim);
  }

  /** A line that says how much alike two pictures are, beside how much they should be at least. */
  public static String likeness(String what, double decibel, double least) {
    return String.format(
        Locale.ROOT,
        "| %s | %.1f dB | | | at least %.0f dB | %s |",
        what,
        decibel,
        least,
        decibel >= least ? "" : "**lost**");
  }

  /** The line, in Markdown; a ratio over its aim is marked as lost. */
  public String line() {
    Double y = yardstick;
    if (y == null) {
      return String.format(
          Locale.ROOT,
          "| %s | %s | %s: not installed | | %s | |",
          what,
          figure(here),
          against,
          most());
    }
    return String.format(
        Locale.ROOT,
        "| %s | %s | %s %s | %.3f | %s | %s |",
        what,
        figure(here),
        against,
        figure(y),
        here / y,
        most(),
        here / y <= aim ? "" : "**lost**");
  }

  private String most() {
    return aim < Double.POSITIVE_INFINITY ? String.format(Locale.ROOT, "%.2f", aim) : "";
  }

  private String figure(double value) {
    if (unit.equals("bytes")) {
      return String.format(Locale.ROOT, "%,.0f bytes", value);
    }
    return value < 10_000
        ? String.format(Locale.ROOT, "%.1f µs", value)
        : String.format(Locale.ROOT, "%.1f ms", value / 1000);
  }
}
