package dev.placket.demo.result;

import dev.placket.layout.image.PrintLimits;

/**
 * How a run is told.
 *
 * @param units what printed lengths are said in
 * @param limits under what printed sizes a warning is given
 */
public record Telling(Units units, PrintLimits limits) {
  /** Millimetres, and the limits of common practice. */
  public static final Telling USUAL = new Telling(Units.MM, PrintLimits.DEFAULT);
}
