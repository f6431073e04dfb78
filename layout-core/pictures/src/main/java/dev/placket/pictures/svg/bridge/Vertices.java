package dev.placket.pictures.svg.bridge;

import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import org.apache.batik.ext.awt.geom.ExtendedGeneralPath;
import org.apache.batik.ext.awt.geom.ExtendedPathIterator;
import org.jspecify.annotations.Nullable;

/**
 * The vertices of a path and the directions there (SVG 2, 9.5.1 and 13.7.4): what has no length has
 * the direction of what comes before it, or else after it, and a closed subpath has no ends.
 */
final class Vertices {
  /** A vertex and its direction in degrees. */
  record Vertex(Point2D at, double direction) {}

  /** A segment; its directions as vectors, null where it has no length. */
  private record Segment(Point2D to, double @Nullable [] out, double @Nullable [] in) {}

  private final List<Vertex> all = new ArrayList<>();
  private final List<Segment> open = new ArrayList<>();
  private Point2D start = new Point2D.Double();

  private Vertices() {}

  static List<Vertex> of(ExtendedPathIterator path) {
    Vertices v = new Vertices();
    double[] c = new double[7];
    Point2D at = v.start;
    for (; !path.isDone(); path.next()) {
      int kind = path.currentSegment(c);
      if (kind == PathIterator.SEG_MOVETO) {
        v.end(false);
        v.start = new Point2D.Double(c[0], c[1]);
        v.open.add(new Segment(v.start, null, null));
        at = v.start;
      } else {
        if (v.open.isEmpty()) {
          // What follows a close begins at its point, which has its vertex.
          v.open.add(new Segment(at, null, null));
        }
        Segment next = kind == PathIterator.SEG_CLOSE ? v.line(at, v.start) : v.next(kind, at, c);
        v.open.add(next);
        at = next.to;
        if (kind == PathIterator.SEG_CLOSE) {
          v.end(true);
        }
      }
    }
    v.end(false);
    return v.all;
  }

  private Segment next(int kind, Point2D from, double[] c) {
    return switch (kind) {
      case PathIterator.SEG_LINETO -> line(from, new Point2D.Double(c[0], c[1]));
      case PathIterator.SEG_QUADTO -> curve(from, c, 2);
      case PathIterator.SEG_CUBICTO -> curve(from, c, 3);
      default -> arc(from, c);
    };
  }

  private Segment line(Point2D from, Point2D to) {
    double[] along = vector(from, to);
    return new Segment(to, along, along);
  }

  /** Along the first and the last of its points that are not those of its ends. */
  private static Segment curve(Point2D from, double[] c, int points) {
    Point2D to = new Point2D.Double(c[2 * points - 2], c[2 * points - 1]);
    double[] out = null;
    double[] in = null;
    for (int i = 0; i < points; i++) {
      Point2D first = new Point2D.Double(c[2 * i], c[2 * i + 1]);
      int back = points - 2 - i;
      Point2D last = back < 0 ? from : new Point2D.Double(c[2 * back], c[2 * back + 1]);
      out = out == null ? vector(from, first) : out;
      in = in == null ? vector(last, to) : in;
    }
    return new Segment(to, out, in);
  }

  private Segment arc(Point2D from, double[] c) {
    Point2D to = new Point2D.Double(c[5], c[6]);
    if (c[0] == 0 || c[1] == 0 || from.equals(to)) {
      return line(from, to);
    }
    Arc2D arc =
        ExtendedGeneralPath.computeArc(
            from.getX(), from.getY(), c[0], c[1], c[2], c[3] != 0, c[4] != 0, c[5], c[6]);
    AffineTransform turned =
        AffineTransform.getRotateInstance(Math.toRadians(c[2]), arc.getCenterX(), arc.getCenterY());
    double[] out = null;
    double[] in = null;
    double[] p = new double[6];
    for (PathIterator i = arc.getPathIterator(turned); !i.isDone(); i.next()) {
      if (i.currentSegment(p) == PathIterator.SEG_CUBICTO) {
        out = out == null ? vector(from, new Point2D.Double(p[0], p[1])) : out;
        in = vector(new Point2D.Double(p[2], p[3]), new Point2D.Double(p[4], p[5]));
      }
    }
    return new Segment(to, out, in);
  }

  private static double @Nullable [] vector(Point2D from, Point2D to) {
    double x = to.getX() - from.getX();
    double y = to.getY() - from.getY();
    double length = Math.hypot(x, y);
    return length > 0 ? new double[] {x / length, y / length} : null;
  }

  private void end(boolean closed) {
    int last = open.size() - 1;
    boolean continued = !all.isEmpty() && last >= 0 && isContinued();
    for (int i = continued ? 1 : 0; i <= last; i++) {
      boolean atEnd = closed && (i == 0 || i == last);
      double[] in = i == 0 && !closed ? null : in(atEnd ? last : i);
      double[] out = i == last && !closed ? null : out(atEnd ? 1 : i + 1);
      all.add(new Vertex(open.get(i).to, direction(in, out)));
    }
    open.clear();
  }

  /** Whether the subpath begins where a closed one ended, which has that vertex already. */
  private boolean isContinued() {
    return open.get(0).to == start && all.get(all.size() - 1).at == start;
  }

  private double @Nullable [] in(int segment) {
    double[] before = before(segment);
    return before == null ? after(segment + 1) : before;
  }

  private double @Nullable [] out(int segment) {
    double[] after = after(segment);
    return after == null ? before(segment - 1) : after;
  }

  private double @Nullable [] before(int segment) {
    for (int i = Math.min(segment, open.size() - 1); i > 0; i--) {
      double[] in = open.get(i).in;
      if (in != null) {
        return in;
      }
    }
    return null;
  }

  private double @Nullable [] after(int segment) {
    for (int i = segment; i < open.size(); i++) {
      double[] out = open.get(i).out;
      if (out != null) {
        return out;
      }
    }
    return null;
  }

  /** Half way between both; of two that are opposite, half a turn to the right of the first. */
  private static double direction(double @Nullable [] in, double @Nullable [] out) {
    double[] a = in == null ? out : in;
    double[] b = out == null ? in : out;
    if (a == null || b == null) {
      return 0;
    }
    double x = a[0] + b[0];
    double y = a[1] + b[1];
    if (Math.hypot(x, y) < 1e-9) {
      return Math.toDegrees(Math.atan2(a[1], a[0])) - 90;
    }
    return Math.toDegrees(Math.atan2(y, x));
  }
}
