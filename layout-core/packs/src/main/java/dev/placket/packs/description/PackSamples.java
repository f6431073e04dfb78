package dev.placket.packs.description;

import dev.placket.packs.sample.SampleVerdict;
import dev.placket.packs.sample.Wash;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The samples of a style and where their measured values are.
 *
 * @param files with a row for each point of a sample or each comment
 * @param checks the samples by the names that the files have for them, in the order of their rounds
 */
public record PackSamples(List<Source> files, Map<String, Check> checks) {
  /** Copies the collections. */
  public PackSamples {
    files = List.copyOf(files);
    checks = Pack.ordered(checks);
  }

  /**
   * A file beside the description.
   *
   * @param file of comma-separated values, or a workbook
   * @param ranges of the workbook: defined names, or a worksheet and its cells; none for
   *     comma-separated values
   */
  public record Source(String file, List<String> ranges) {
    /** Copies the list. */
    public Source {
      ranges = List.copyOf(ranges);
    }
  }

  /**
   * A sample. What is left out is empty on the sheet, to be written by hand.
   *
   * @param stage as in second fit
   * @param round its number, as written
   * @param colour the colourway that it is made in
   * @param received the date on which it came, as written
   * @param measured the date on which it was measured, as written
   * @param wash whether it was washed before; null if not stated
   * @param substitutions what is not as it was asked for, as a substitute fabric
   * @param verdict what is decided on it; null for nothing yet
   * @param by who checked it
   * @param sizes the sizes that are measured; empty for those of the files, or the sample size
   */
  public record Check(
      Words stage,
      String round,
      Words colour,
      String received,
      String measured,
      @Nullable Wash wash,
      Words substitutions,
      @Nullable SampleVerdict verdict,
      String by,
      List<String> sizes) {
    /** Copies the list. */
    public Check {
      sizes = List.copyOf(sizes);
    }
  }
}
