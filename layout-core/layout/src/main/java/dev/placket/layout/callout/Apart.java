package dev.placket.layout.callout;

import dev.placket.layout.units.PlanePoint;
import java.util.List;

/** How near leaders come to one another and to spots. */
final class Apart {
  /** Leaders nearer than this touch, in points. */
  private static final double TOUCH = 0.25;

  /**
   * A leader nearer than this to the dot of another runs into it: half a dot of 1 mm and a line.
   */
  private static final double DOT = 2;

  private Apart() {}

  /** Whether two leaders cross or touch; those of one spot part at once. */
  static boolean cross(List<PlanePoint> a, List<PlanePoint> b) {
    if (a.get(0).equals(b.get(0))) {
      return sameWay(a, b);
    }
    for (int i = 1; i < a.size(); i++) {
      for (int j = 1; j < b.size(); j++) {
        if (distance(a.get(i - 1), a.get(i), b.get(j - 1), b.get(j)) < TOUCH) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean sameWay(List<PlanePoint> a, List<PlanePoint> b) {
    PlanePoint from = a.get(0);
    double ax = a.get(1).x() - from.x();
    double ay = a.get(1).y() - from.y();
    double bx = b.get(1).x() - from.x();
    double by = b.get(1).y() - from.y();
    return Math.abs(ax * by - ay * bx) <= 1e-9 * (Math.abs(ax * bx) + Math.abs(ay * by))
        && ax * bx + ay * by > 0;
  }

  /** Whether a leader runs into one of these spots that is not its own. */
  static boolean meetsOne(List<PlanePoint> leader, List<PlanePoint> spots) {
    return spots.stream().anyMatch(spot -> meets(leader, ClearDisc.dot(spot)));
  }

  /** Whether a leader runs into a dot or a ring in which it does not start. */
  static boolean meets(List<PlanePoint> leader, ClearDisc disc) {
    PlanePoint own = leader.get(0);
    PlanePoint middle = disc.middle();
    boolean ring = disc.radius() > 0;
    double start = ring ? disc.radius() + TOUCH : 2 * DOT;
    if (Math.hypot(own.x() - middle.x(), own.y() - middle.y()) < start) {
      // No leader can keep clear of a dot that lies on its own, nor of a ring around it.
      return false;
    }
    double least = ring ? start : DOT;
    for (int i = 1; i < leader.size(); i++) {
      if (distance(middle, leader.get(i - 1), leader.get(i)) < least) {
        return true;
      }
    }
    return false;
  }

  private static double distance(PlanePoint a, PlanePoint b, PlanePoint c, PlanePoint d) {
    if (side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0) {
      return 0;
    }
    return Math.min(
        Math.min(distance(a, c, d), distance(b, c, d)),
        Math.min(distance(c, a, b), distance(d, a, b)));
  }

  private static double side(PlanePoint a, PlanePoint b, PlanePoint p) {
    return (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
  }

  private static double distance(PlanePoint p, PlanePoint a, PlanePoint b) {
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    double square = dx * dx + dy * dy;
    double along = square == 0 ? 0 : ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / square;
    double t = Math.min(1, Math.max(0, along));
    double x = a.x() + t * dx - p.x();
    double y = a.y() + t * dy - p.y();
    return Math.sqrt(x * x + y * y);
  }
}
