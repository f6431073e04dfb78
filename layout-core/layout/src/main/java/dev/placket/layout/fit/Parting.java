package dev.placket.layout.fit;

import dev.placket.layout.flat.Flat;
import java.util.Optional;

/**
 * The free strip between the views of a sheet and its other flats, measured on their placements.
 *
 * @param upright whether the strip runs from top to bottom, the views to its left; else it runs
 *     from left to right, the views above it
 * @param from where the last view ends with its surround, in points from the left or top of the
 *     sheet
 * @param to where the first other flat begins, in points; above {@code from}
 */
public record Parting(boolean upright, double from, double to) {
  /** The line in the middle of the strip, in points. */
  public double middle() {
    return (from + to) / 2;
  }

  /**
   * The strip of a fit; the wider one where both directions have one. O(n).
   *
   * @param request the request that the fit answers
   * @param fit its placements
   * @return empty if there are only views, no views, or no straight strip between
   */
  public static Optional<Parting> of(FitRequest request, Fit fit) {
    double[] ends = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
    double[] begins = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
    for (Flat flat : request.flats()) {
      ExactBox box = PlacedBoxes.footprint(flat, fit.placement(flat.id()));
      if (flat.role().isView()) {
        ends[0] = Math.max(ends[0], box.right().doubleValue());
        ends[1] = Math.max(ends[1], box.bottom().doubleValue());
      } else {
        begins[0] = Math.min(begins[0], box.left().doubleValue());
        begins[1] = Math.min(begins[1], box.top().doubleValue());
      }
    }
    int wider = begins[0] - ends[0] >= begins[1] - ends[1] ? 0 : 1;
    boolean strip = begins[wider] > ends[wider];
    return strip && !Double.isInfinite(begins[wider] - ends[wider])
        ? Optional.of(new Parting(wider == 0, ends[wider], begins[wider]))
        : Optional.empty();
  }
}
