package dev.placket.layout.callout;

import dev.placket.layout.units.PlanePoint;
import java.util.List;

/**
 * How leaders of one kind run to the right.
 *
 * @param degrees the angle of the inclined part; 0 for one straight line
 * @param tangent of that angle
 */
record LeaderPath(int degrees, double tangent) {
  static final LeaderPath STRAIGHT = new LeaderPath(0, 0);

  /** The flattest first. Roots are the same on every machine, sines are not. */
  static final List<LeaderPath> INCLINED =
      List.of(
          new LeaderPath(30, 1 / Math.sqrt(3)),
          new LeaderPath(45, 1),
          new LeaderPath(60, Math.sqrt(3)));

  static List<LeaderPath> of(LeaderStyle style) {
    return style == LeaderStyle.STRAIGHT ? List.of(STRAIGHT) : INCLINED;
  }

  /** The length from a spot to a port; infinite where the way is too short for the incline. */
  double length(PlanePoint spot, double edge, double port) {
    double across = edge - spot.x();
    double down = Math.abs(port - spot.y());
    if (across < 0) {
      return Double.POSITIVE_INFINITY;
    }
    if (degrees == 0) {
      return Math.sqrt(across * across + down * down);
    }
    double run = down / tangent;
    return run > across
        ? Double.POSITIVE_INFINITY
        : Math.sqrt(run * run + down * down) + across - run;
  }

  /** Its points, from the spot on. */
  List<PlanePoint> points(PlanePoint spot, double edge, double port) {
    PlanePoint end = new PlanePoint(edge, port);
    double run = degrees == 0 ? 0 : Math.abs(port - spot.y()) / tangent;
    return run == 0 ? List.of(spot, end) : List.of(spot, new PlanePoint(spot.x() + run, port), end);
  }
}
