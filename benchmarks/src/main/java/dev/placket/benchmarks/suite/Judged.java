package dev.placket.benchmarks.suite;

import java.util.Locale;

/**
 * One drawing of the suite and how it comes out.
 *
 * @param file its path inside the suite, with forward slashes
 * @param wrong the share of wrong pixels, 0 to 1; 1 if there is no rendering
 * @param said notes, or why it was refused, on one line; empty if nothing is said
 */
public record Judged(String file, Standing standing, double wrong, String said) {
  /** One line, columns apart by tabs. */
  public String line() {
    return String.format(
        Locale.ROOT, "%s\t%.2f %%\t%s\t%s", standing.words(), 100 * wrong, file, said);
  }
}
