package dev.placket.pictures.prepare;

import java.util.List;

/**
 * How many bytes a picture takes at a density, through densities at which it was encoded: a power
 * of the density between each two. Line art grows with little more than its edges (power 1.3 to
 * 1.5), photographs with their area (power 2), and a step to another kind of PNG bends the curve,
 * which is why it goes through more than two.
 *
 * @param points what was measured, at least one; both figures rise from one to the next
 * @param most pixels per inch beyond which the picture has no more pixels to give; infinite for a
 *     drawing
 */
public record WeightCurve(List<Point> points, double most) {
  /** Beyond a single measurement a picture grows with its area. */
  private static final double AREA = 2;

  /**
   * One measurement.
   *
   * @param perInch pixels per printed inch
   * @param bytes what it took
   */
  public record Point(double perInch, double bytes) {}

  /**
   * Copies the points.
   *
   * @throws IllegalArgumentException with them, unless all figures are above zero and densities
   *     rise
   */
  public WeightCurve {
    points = List.copyOf(points);
    double last = 0;
    for (Point p : points) {
      if (!(p.perInch > last) || !(p.bytes > 0)) {
        throw new IllegalArgumentException("a weight curve through " + points);
      }
      last = p.perInch;
    }
    if (points.isEmpty() || !(most > 0)) {
      throw new IllegalArgumentException("a weight curve through " + points + " up to " + most);
    }
  }

  /** Bytes expected at a density; no more than at {@link #most()}. O(points). */
  public double bytes(double perInch) {
    double at = Math.min(perInch, most);
    int after = 1;
    while (after < points.size() - 1 && points.get(after).perInch < at) {
      after++;
    }
    Point low = points.get(after - 1);
    if (points.size() == 1) {
      return low.bytes * Math.pow(at / low.perInch, AREA);
    }
    Point high = points.get(after);
    double power = Math.log(high.bytes / low.bytes) / Math.log(high.perInch / low.perInch);
    return low.bytes * Math.pow(at / low.perInch, Math.max(0, power));
  }
}
