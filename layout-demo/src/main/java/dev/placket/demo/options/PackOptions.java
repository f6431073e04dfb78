package dev.placket.demo.options;

import dev.placket.packs.compose.PackLimits;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import picocli.CommandLine.Option;

/** The options of {@code placket fit} for the maximum size of a pack. */
public final class PackOptions {
  private static final long MILLION = 1_000_000;

  /** A picture in memory has at most 2<sup>31</sup> pixels. */
  private static final long MOST_PREVIEW = 2_000;

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

  @Option(
      names = "--max-preview",
      paramLabel = "N",
      description =
          "The maximum of one preview, in million pixels (default: 24); larger paper gets fewer"
              + " pixels per inch.")
  private long preview = PackLimits.DEFAULT.preview() / MILLION;

  /**
   * The limits that the options give.
   *
   * @throws Refusal if one is not above zero
   */
  public PackLimits limits() throws Refusal {
    check("--max-sheets", sheets);
    check("--max-rows", rows);
    check("--max-pixels", pixels);
    check("--max-preview", preview);
    if (preview > MOST_PREVIEW) {
      throw Refusal.input(
          Fault.of(Fault.Kind.SETTING, "--max-preview " + preview, "is too large")
              .remedy("give at most " + MOST_PREVIEW));
    }
    long all = Math.min(pixels, Long.MAX_VALUE / MILLION) * MILLION;
    return new PackLimits(sheets, rows, all, preview * MILLION);
  }

  private static void check(String option, long limit) throws Refusal {
    if (limit < 1) {
      throw Refusal.input(
          Fault.of(Fault.Kind.SETTING, option + " " + limit, "is not a limit")
              .remedy("give a number above zero"));
    }
  }
}
