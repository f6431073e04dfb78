package dev.placket.pictures.shape;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import org.jspecify.annotations.Nullable;

/**
 * The true box of a path: curves reach to their extremes, not to their control points (which the
 * boxes of Java before 19 include).
 */
public final class PathBounds {
  private double left = Double.POSITIVE_INFINITY;
  private double top = Double.POSITIVE_INFINITY;
  private double right = Double.NEGATIVE_INFINITY;
  private double bottom = Double.NEGATIVE_INFINITY;

  private PathBounds() {}

  /** The box, or null of an empty path or one that is not finite. */
  public static @Nullable Rectangle2D of(Shape shape) {
    PathBounds b = new PathBounds();
    double[] c = new double[6];
    double x = 0;
    double y = 0;
    for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
      int kind = i.currentSegment(c);
      int last = kind == PathIterator.SEG_CUBICTO ? 4 : kind == PathIterator.SEG_QUADTO ? 2 : 0;
      if (kind == PathIterator.SEG_CLOSE) {
        continue;
      }
      if (kind == PathIterator.SEG_QUADTO) {
        b.quad(x, c[0], c[2], y, c[1], c[3]);
      } else if (kind == PathIterator.SEG_CUBICTO) {
        b.cubic(x, c[0], c[2], c[4], y, c[1], c[3], c[5]);
      }
      x = c[last];
      y = c[last + 1];
      b.point(x, y);
    }
    boolean finite = Double.isFinite(b.left + b.right + b.top + b.bottom);
    return finite
        ? new Rectangle2D.Double(b.left, b.top, b.right - b.left, b.bottom - b.top)
        : null;
  }

  private void point(double x, double y) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }

  private void quad(double x0, double x1, double x2, double y0, double y1, double y2) {
    double[] ts = {turn(x0, x1, x2), turn(y0, y1, y2)};
    for (double t : ts) {
      if (t > 0 && t < 1) {
        point(quadAt(x0, x1, x2, t), quadAt(y0, y1, y2, t));
      }
    }
  }

  private static double turn(double a, double b, double c) {
    return (a - b) / (a - 2 * b + c);
  }

  private static double quadAt(double a, double b, double c, double t) {
    double u = 1 - t;
    return u * u * a + 2 * u * t * b + t * t * c;
  }

  private void cubic(
      double x0, double x1, double x2, double x3, double y0, double y1, double y2, double y3) {
    for (double t : turns(x0, x1, x2, x3)) {
      cubicPoint(x0, x1, x2, x3, y0, y1, y2, y3, t);
    }
    for (double t : turns(y0, y1, y2, y3)) {
      cubicPoint(x0, x1, x2, x3, y0, y1, y2, y3, t);
    }
  }

  private void cubicPoint(
      double x0,
      double x1,
      double x2,
      double x3,
      double y0,
      double y1,
      double y2,
      double y3,
      double t) {
    if (t > 0 && t < 1) {
      point(cubicAt(x0, x1, x2, x3, t), cubicAt(y0, y1, y2, y3, t));
    }
  }

  /** Where the derivative is nought: (a t² + b t + c) = 0, in the form that does not cancel. */
  private static double[] turns(double p0, double p1, double p2, double p3) {
    double a = 3 * (-p0 + 3 * p1 - 3 * p2 + p3);
    double b = 6 * (p0 - 2 * p1 + p2);
    double c = 3 * (p1 - p0);
    double q = -(b + Math.copySign(Math.sqrt(Math.max(0, b * b - 4 * a * c)), b)) / 2;
    return new double[] {q / a, c / q};
  }

  private static double cubicAt(double a, double b, double c, double d, double t) {
    double u = 1 - t;
    return u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d;
  }
}
