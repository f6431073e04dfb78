package dev.placket.layout.callout;

import java.util.List;

/**
 * The labels of a column in their places, from top to bottom, without a crossing.
 *
 * @param callouts the labels
 * @param degrees the angle of inclined parts; 0 for straight leaders
 * @param length the sum of the leaders' lengths, in points
 * @param bound no order of the labels in these places has a smaller sum at this angle without
 *     crossings
 */
public record LaidColumn(List<LaidCallout> callouts, int degrees, double length, double bound) {
  /** What rounding may add up to. */
  private static final double ROUNDING = 1e-9;

  /** Copies the list. */
  public LaidColumn {
    callouts = List.copyOf(callouts);
  }

  /** Whether the sum is known to be the least. */
  public boolean proven() {
    return length <= bound + ROUNDING * Math.max(1, length);
  }
}
