package dev.placket.packs.dimensions;

import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;

/** Geometry of straight pieces in the plane. Square roots alone: they are the same everywhere. */
final class Segments {
  /** Points that are nearer, in points on the sheet, are one. */
  private static final double TOUCH = 1e-6;

  private Segments() {}

  static double length(PlanePoint a, PlanePoint b) {
    double x = b.x() - a.x();
    double y = b.y() - a.y();
    return Math.sqrt(x * x + y * y);
  }

  static double length(List<PlanePoint> line) {
    double sum = 0;
    for (int i = 1; i < line.size(); i++) {
      sum += length(line.get(i - 1), line.get(i));
    }
    return sum;
  }

  static PlanePoint between(PlanePoint a, PlanePoint b, double share) {
    return new PlanePoint(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y()));
  }

  /** The point so far along a line, and the way that the line takes there, of length 1. */
  static PlanePoint[] at(List<PlanePoint> line, double far) {
    double left = far;
    for (int i = 1; i < line.size(); i++) {
      PlanePoint a = line.get(i - 1);
      PlanePoint b = line.get(i);
      double length = length(a, b);
      if (left <= length && length > 0 || i == line.size() - 1) {
        double share = length == 0 ? 0 : left / length;
        double one = length == 0 ? 1 : length;
        PlanePoint way = new PlanePoint((b.x() - a.x()) / one, (b.y() - a.y()) / one);
        return new PlanePoint[] {between(a, b, Math.min(1, share)), way};
      }
      left -= length;
    }
    throw new IllegalStateException("a line of one point");
  }

  /** The ends of a straight measure, so far beside its spots. */
  static List<PlanePoint> beside(DimensionRun run, PlanePoint a, PlanePoint b, double away) {
    return switch (run) {
      case LEVEL ->
          List.of(new PlanePoint(a.x(), a.y() + away), new PlanePoint(b.x(), a.y() + away));
      case UPRIGHT ->
          List.of(new PlanePoint(a.x() + away, a.y()), new PlanePoint(a.x() + away, b.y()));
      default -> {
        double length = length(a, b);
        double x = length == 0 ? 0 : -(b.y() - a.y()) / length * away;
        double y = length == 0 ? 0 : (b.x() - a.x()) / length * away;
        yield List.of(new PlanePoint(a.x() + x, a.y() + y), new PlanePoint(b.x() + x, b.y() + y));
      }
    };
  }

  /** A line of many short steps, moved to the right of its way. */
  static List<PlanePoint> offset(List<PlanePoint> way, double away) {
    if (away == 0) {
      return way;
    }
    List<PlanePoint> moved = new ArrayList<>();
    for (int i = 0; i < way.size(); i++) {
      PlanePoint a = way.get(Math.max(0, i - 1));
      PlanePoint b = way.get(Math.min(way.size() - 1, i + 1));
      double length = length(a, b);
      double x = length == 0 ? 0 : -(b.y() - a.y()) / length * away;
      double y = length == 0 ? 0 : (b.x() - a.x()) / length * away;
      moved.add(new PlanePoint(way.get(i).x() + x, way.get(i).y() + y));
    }
    return moved;
  }

  /** On which side of a line a point lies: its sign. */
  private static double side(PlanePoint a, PlanePoint b, PlanePoint p) {
    return (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
  }

  /** Whether two segments cross, each coming out on the other side of the other. */
  static boolean cross(PlanePoint a, PlanePoint b, PlanePoint c, PlanePoint d) {
    return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
  }

  /** Whether two segments share a point, at which not both of them end. */
  static boolean meet(PlanePoint a, PlanePoint b, PlanePoint c, PlanePoint d) {
    return cross(a, b, c, d)
        || touches(a, b, c)
        || touches(a, b, d)
        || touches(c, d, a)
        || touches(c, d, b);
  }

  /** Whether a point lies on a segment, and not at its ends. */
  private static boolean touches(PlanePoint a, PlanePoint b, PlanePoint p) {
    double length = length(a, b);
    if (length <= TOUCH || length(p, a) <= TOUCH || length(p, b) <= TOUCH) {
      return false;
    }
    double along = ((p.x() - a.x()) * (b.x() - a.x()) + (p.y() - a.y()) * (b.y() - a.y())) / length;
    return Math.abs(side(a, b, p)) / length <= TOUCH && along > 0 && along < length;
  }

  /** How far apart two parallel segments run side by side; infinite where they do not. */
  static double apart(PlanePoint a, PlanePoint b, PlanePoint c, PlanePoint d) {
    double one = length(a, b);
    double other = length(c, d);
    if (one == 0 || other == 0) {
      return Double.POSITIVE_INFINITY;
    }
    double x = (b.x() - a.x()) / one;
    double y = (b.y() - a.y()) / one;
    double turn = (x * (d.y() - c.y()) - y * (d.x() - c.x())) / other;
    double from = x * (c.x() - a.x()) + y * (c.y() - a.y());
    double to = x * (d.x() - a.x()) + y * (d.y() - a.y());
    boolean parallel = Math.abs(turn) < 1e-6;
    boolean besides = Math.max(from, to) > 1e-9 && Math.min(from, to) < one - 1e-9;
    return parallel && besides
        ? Math.abs(x * (c.y() - a.y()) - y * (c.x() - a.x()))
        : Double.POSITIVE_INFINITY;
  }

  /** Whether a segment comes into a box: the box lies on both sides of it, and beside it. */
  static boolean enters(PlanePoint a, PlanePoint b, Rect box) {
    if (Math.max(a.x(), b.x()) <= box.left()
        || Math.min(a.x(), b.x()) >= box.right()
        || Math.max(a.y(), b.y()) <= box.top()
        || Math.min(a.y(), b.y()) >= box.bottom()) {
      return false;
    }
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (double x : new double[] {box.left(), box.right()}) {
      for (double y : new double[] {box.top(), box.bottom()}) {
        double side = side(a, b, new PlanePoint(x, y));
        least = Math.min(least, side);
        most = Math.max(most, side);
      }
    }
    return least < 0 && most > 0;
  }

  /** The shares of a segment between which it lies in a box; empty where it does not. */
  static double[] inside(PlanePoint a, PlanePoint b, Rect box) {
    double from = 0;
    double to = 1;
    double[] starts = {a.x(), a.y()};
    double[] ways = {b.x() - a.x(), b.y() - a.y()};
    double[] least = {box.left(), box.top()};
    double[] most = {box.right(), box.bottom()};
    for (int axis = 0; axis < 2; axis++) {
      if (ways[axis] == 0) {
        if (starts[axis] <= least[axis] || starts[axis] >= most[axis]) {
          return new double[0];
        }
        continue;
      }
      double in = (least[axis] - starts[axis]) / ways[axis];
      double out = (most[axis] - starts[axis]) / ways[axis];
      from = Math.max(from, Math.min(in, out));
      to = Math.min(to, Math.max(in, out));
    }
    return from < to ? new double[] {from, to} : new double[0];
  }
}
