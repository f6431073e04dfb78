package dev.placket.packs.report;

import dev.placket.pictures.base.PrintLimits;

/**
 * How a run is reported.
 *
 * @param units the unit of printed lengths
 * @param limits the printed sizes below which a warning is given
 * @param strict whether a picture that cannot be drawn as its file says is refused
 */
public record ReportOptions(Units units, PrintLimits limits, boolean strict) {
  /** Millimetres, and the limits of common practice. */
  public static final ReportOptions USUAL = new ReportOptions(Units.MM, PrintLimits.DEFAULT, false);
}
