package dev.placket.packs.dimensions;

import dev.placket.layout.units.PlanePoint;

/**
 * A point of measure on a flat.
 *
 * @param code the point's
 * @param from a point of the flat
 * @param to another
 * @param run which way it runs
 * @param beside how far the line lies beside its spots, in drawing units: below a level line, right
 *     of an upright one, to the right of the way for a straight one; extension lines lead there
 */
public record MeasureLine(String code, String from, String to, DimensionRun run, double beside) {
  /** The ends of the line, for spots in one unit and a distance in the same. */
  PlanePoint[] ends(PlanePoint a, PlanePoint b, double away) {
    return switch (run) {
      case LEVEL ->
          new PlanePoint[] {
            new PlanePoint(a.x(), a.y() + away), new PlanePoint(b.x(), a.y() + away)
          };
      case UPRIGHT ->
          new PlanePoint[] {
            new PlanePoint(a.x() + away, a.y()), new PlanePoint(a.x() + away, b.y())
          };
      case STRAIGHT -> {
        double length = Math.sqrt(square(b.x() - a.x()) + square(b.y() - a.y()));
        double x = length == 0 ? 0 : -(b.y() - a.y()) / length * away;
        double y = length == 0 ? 0 : (b.x() - a.x()) / length * away;
        yield new PlanePoint[] {
          new PlanePoint(a.x() + x, a.y() + y), new PlanePoint(b.x() + x, b.y() + y)
        };
      }
    };
  }

  /** The ends of the line in drawing units, from first to last. */
  public java.util.List<PlanePoint> ends(PlanePoint a, PlanePoint b) {
    return java.util.List.of(ends(a, b, beside));
  }

  /** What is measured between two spots, in their unit. */
  public double length(PlanePoint a, PlanePoint b) {
    PlanePoint[] ends = ends(a, b, 0);
    return Math.sqrt(square(ends[1].x() - ends[0].x()) + square(ends[1].y() - ends[0].y()));
  }

  private static double square(double x) {
    return x * x;
  }
}
