package dev.placket.demo.options;

import dev.placket.packs.compose.PackLimits;
import dev.placket.packs.refusal.Refusal;
import picocli.CommandLine.Option;

/** The options of {@code placket fit} that say how large a pack may be. */
public final class PackOptions {
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
  public PackLimits limits() throws Refusal {
    if (sheets < 1 || rows < 1) {
      String option = sheets < 1 ? "--most-sheets " + sheets : "--most-rows " + rows;
      throw Refusal.input(option + ": a limit is above zero.");
    }
    return new PackLimits(sheets, rows);
  }
}
