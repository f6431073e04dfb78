package dev.placket.demo.options;

import dev.placket.packs.compose.PackLimits;
import dev.placket.packs.refusal.Refusal;
import picocli.CommandLine.Option;

/** The options of {@code placket fit} that say how large a pack may be. */
public final class PackOptions {
  private static final long MILLION = 1_000_000;

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

  @Option(
      names = "--most-pixels",
      paramLabel = "N",
      description = "Refuses a pack whose previews come to more million pixels; else 2000.")
  private long pixels = PackLimits.DEFAULT.pixels() / MILLION;

  /**
   * What was asked for.
   *
   * @throws Refusal if one is not above zero
   */
  public PackLimits limits() throws Refusal {
    check("--most-sheets", sheets);
    check("--most-rows", rows);
    check("--most-pixels", pixels);
    return new PackLimits(sheets, rows, Math.min(pixels, Long.MAX_VALUE / MILLION) * MILLION);
  }

  private static void check(String option, long limit) throws Refusal {
    if (limit < 1) {
      throw Refusal.input(option + " " + limit + ": a limit is above zero.");
    }
  }
}
