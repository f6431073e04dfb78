package dev.placket.demo.options;

import dev.placket.layout.units.Length;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.PrintLimits;
import picocli.CommandLine.Option;

/** The options that say below what a printed line, lettering or gap is warned of. */
public final class LimitOptions {
  @Option(
      names = "--warn-line",
      paramLabel = "LENGTH",
      description = "Warns of printed lines under this; 0.18mm if not given.")
  private String line = "0.18mm";

  @Option(
      names = "--warn-lettering",
      paramLabel = "LENGTH",
      description = "Warns of printed capitals under this; 1.8mm if not given.")
  private String lettering = "1.8mm";

  @Option(
      names = "--warn-gap",
      paramLabel = "LENGTH",
      description = "Warns of clear gaps between stitches under this; 0.5mm if not given.")
  private String gap = "0.5mm";

  /**
   * What was asked for.
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
      // Said below, with the option's name.
    }
    throw Refusal.input(
        option + " " + text + ": is no length above zero; give it as in 180mm, 18cm or 7in.");
  }
}
