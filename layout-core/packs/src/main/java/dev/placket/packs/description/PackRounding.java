package dev.placket.packs.description;

import java.util.List;

/**
 * Round scales of a pack.
 *
 * @param series scales that count as round, printed length over real length; none for the usual
 * @param most what of a scale may be given up for a round one, above 0 and below 1
 */
public record PackRounding(List<Double> series, double most) {
  /** What may be given up where nothing is stated. */
  public static final double USUAL_SHARE = 0.2;

  /** Copies the series. */
  public PackRounding {
    series = List.copyOf(series);
  }
}
