package dev.placket.packs.report;

import dev.placket.pictures.PrintLimits;

/**
 * How a run is told.
 *
 * @param units what printed lengths are said in
 * @param limits under what printed sizes a warning is given
 * @param strict whether a picture that is drawn other than its file says is refused
 */
public record ReportOptions(Units units, PrintLimits limits, boolean strict) {
  /** Millimetres, and the limits of common practice. */
  public static final ReportOptions USUAL = new ReportOptions(Units.MM, PrintLimits.DEFAULT, false);
}
