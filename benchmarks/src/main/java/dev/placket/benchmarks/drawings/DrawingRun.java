package dev.placket.benchmarks.drawings;

import dev.placket.benchmarks.outside.PlacketJars;
import java.util.Locale;

/**
 * What the command answers to one drawing.
 *
 * @param file the drawing
 * @param probe how {@code probe} ended
 * @param fit how {@code fit} ended with the drawing as its front
 */
public record DrawingRun(String file, PlacketJars.Ended probe, PlacketJars.Ended fit) {
  private static final int REFUSED = 2;
  private static final int NO_ROOM = 4;

  /** Whether {@code fit} placed it, soft or not. */
  public boolean placed() {
    return fit.code() == 0 || fit.code() == 3;
  }

  /** Whether {@code fit} read it but had no room. */
  public boolean noRoom() {
    return fit.code() == NO_ROOM;
  }

  /** Whether both commands refuse it with a message. */
  public boolean refused() {
    return probe.code() == REFUSED && fit.code() == REFUSED;
  }

  /** Whether one ended with an internal error, or not at all. */
  public boolean crashed() {
    return probe.code() == PlacketJars.CRASHED || fit.code() == PlacketJars.CRASHED;
  }

  /** Whether one took more memory than there is, whatever was estimated. */
  public boolean outOfMemory() {
    return (probe.said() + fit.said()).contains("that Java may use");
  }

  /** Whether one command takes it and the other refuses it. */
  public boolean disagreed() {
    return !crashed() && (probe.code() == REFUSED) != (fit.code() == REFUSED);
  }

  /** The wall time of the slower command, in seconds. */
  public double seconds() {
    return Math.max(probe.seconds(), fit.seconds());
  }

  /** Whether nothing is wrong with the answers, and none took longer than so many seconds. */
  public boolean sound(double most) {
    return !crashed() && !disagreed() && !outOfMemory() && seconds() <= most;
  }

  /** One line: both codes and times, the file, and the first line of what is not placed. */
  public String line() {
    String why = placed() ? probe.code() == 0 ? "" : probe.said() : fit.said();
    return String.format(
            Locale.ROOT,
            "probe %d in %.1f s, fit %d in %.1f s: %s %s",
            probe.code(),
            probe.seconds(),
            fit.code(),
            fit.seconds(),
            file,
            why.lines().findFirst().orElse(""))
        .strip();
  }
}
