package dev.placket.packs.report;

import dev.placket.layout.fit.FlowResult;
import dev.placket.layout.fit.FlowSheet;
import java.math.BigDecimal;

/**
 * Which of several sheets that one went on over this is.
 *
 * @param number from 1 on
 * @param count how many there are
 * @param scale the common scale of this sheet in terms of the leading flat of all of them
 * @param bound no way to share the flats among so many sheets makes the least of those larger
 * @param provenFewest whether it is known that fewer sheets do not hold them
 */
public record Further(int number, int count, BigDecimal scale, double bound, boolean provenFewest) {

  /** A sheet of a flow. */
  public static Further of(FlowSheet sheet, FlowResult flow) {
    return new Further(
        sheet.number(), sheet.count(), sheet.scale(), flow.bound(), flow.provenFewest());
  }

  /** The same sheet with its flats at another common scale. */
  public Further at(BigDecimal its) {
    return new Further(number, count, its, bound, provenFewest);
  }
}
