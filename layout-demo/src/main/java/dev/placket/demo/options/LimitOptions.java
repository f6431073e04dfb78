package dev.placket.demo.options;

import dev.placket.layout.units.Length;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.base.PrintLimits;
import dev.placket.pictures.fault.Fault;
import picocli.CommandLine.Option;

/** The options for the printed sizes below which the report warns. */
public final class LimitOptions {
  @Option(
      names = "--warn-line",
      paramLabel = "LENGTH",
      description = "Warns of printed lines finer than this (default: 0.18mm).")
  private String line = "0.18mm";

  @Option(
      names = "--warn-lettering",
      paramLabel = "LENGTH",
      description = "Warns of printed capitals lower than this (default: 1.8mm).")
  private String lettering = "1.8mm";

  @Option(
      names = "--warn-gap",
      paramLabel = "LENGTH",
      description = "Warns of gaps between printed stitches narrower than this (default: 0.5mm).")
  private String gap = "0.5mm";

  /**
   * The limits that the options give.
   *
   * @throws Refusal if one is no length above zero
   */
  public PrintLimits limits() throws Refusal {
    return new PrintLimits(
        length("--warn-line", line),
        length("--warn-lettering", lettering),
        length("--warn-gap", gap));
  }

  /**
   * Reads a length that an option gives.
   *
   * @throws Refusal if it is no length above zero
   */
  public static Length length(String option, String text) throws Refusal {
    try {
      Length length = Length.parse(text);
      if (length.pt() > 0) {
        return length;
      }
    } catch (IllegalArgumentException e) {
      // Reported below, with the name of the option.
    }
    throw Refusal.input(
        Fault.of(Fault.Kind.SETTING, option + " " + text, "is not a length above zero")
            .remedy("write it as in 180mm, 18cm or 7in"));
  }
}
