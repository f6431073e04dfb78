package dev.placket.demo.options;

import dev.placket.packs.compose.PackLimits;
import dev.placket.packs.refusal.Refusal;
import picocli.CommandLine.Option;

/** The options of {@code placket fit} for the maximum size of a pack. */
public final class PackOptions {
  private static final long MILLION = 1_000_000;

  @Option(
      names = "--max-sheets",
      paramLabel = "N",
      description = "The maximum number of sheets of a pack (default: 500).")
  private int sheets = PackLimits.DEFAULT.sheets();

  @Option(
      names = "--max-rows",
      paramLabel = "N",
      description = "The maximum number of rows of a table (default: 20000).")
  private int rows = PackLimits.DEFAULT.rows();

  @Option(
      names = "--max-pixels",
      paramLabel = "N",
      description = "The maximum of all previews together, in million pixels (default: 2000).")
  private long pixels = PackLimits.DEFAULT.pixels() / MILLION;

  /**
   * The limits that the options give.
   *
   * @throws Refusal if one is not above zero
   */
  public PackLimits limits() throws Refusal {
    check("--max-sheets", sheets);
    check("--max-rows", rows);
    check("--max-pixels", pixels);
    return new PackLimits(sheets, rows, Math.min(pixels, Long.MAX_VALUE / MILLION) * MILLION);
  }

  private static void check(String option, long limit) throws Refusal {
    if (limit < 1) {
      throw Refusal.input(option + " " + limit + ": is not a limit; give a number above zero.");
    }
  }
}
