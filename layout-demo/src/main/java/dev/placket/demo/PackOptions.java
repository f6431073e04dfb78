package dev.placket.demo;

import dev.placket.demo.pack.PackLimits;
import picocli.CommandLine.Option;

/** The options of {@code placket fit} that say how large a pack may be. */
final class PackOptions {
  @Option(
      names = "--most-sheets",
      paramLabel = "N",
      description = "Refuses a pack of more sheets; else 500.")
  private int sheets = PackLimits.DEFAULT.sheets();

  @Option(
      names = "--most-rows",
      paramLabel = "N",
      description = "Refuses a table of more rows; else 20000.")
  private int rows = PackLimits.DEFAULT.rows();

  /**
   * What was asked for.
   *
   * @throws Refusal if one is not above zero
   */
  PackLimits limits() throws Refusal {
    if (sheets < 1 || rows < 1) {
      String option = sheets < 1 ? "--most-sheets " + sheets : "--most-rows " + rows;
      throw Refusal.input(option + ": a limit is above zero.");
    }
    return new PackLimits(sheets, rows);
  }

  /**
   * Refuses what comes to more sheets than the limit.
   *
   * @param what what messages call it
   */
  static void check(Object what, int sheets, PackLimits limits) throws Refusal {
    if (sheets > limits.sheets()) {
      throw Refusal.input(
          what
              + ": comes to "
              + sheets
              + " sheets, more than the limit of "
              + limits.sheets()
              + "; split it, or raise the limit with --most-sheets.");
    }
  }
}
