package dev.placket.pictures.path;

import dev.placket.layout.units.PlanePoint;
import java.awt.geom.AffineTransform;

/** A piece of a path: where it lies and how fast it runs, for a parameter from 0 to 1. */
sealed interface PathPiece {
  /** The place at a parameter. */
  PlanePoint at(double t);

  /** The length of the way's change with the parameter. */
  double speed(double t);

  /** Whether it is straight. */
  default boolean straight() {
    return false;
  }

  /** From point to point. */
  record Line(PlanePoint a, PlanePoint b) implements PathPiece {
    @Override
    public PlanePoint at(double t) {
      return new PlanePoint(a.x() + t * (b.x() - a.x()), a.y() + t * (b.y() - a.y()));
    }

    @Override
    public double speed(double t) {
      return length(b.x() - a.x(), b.y() - a.y());
    }

    @Override
    public boolean straight() {
      return true;
    }
  }

  /** A Bézier curve of the third degree. */
  record Cubic(PlanePoint a, PlanePoint b, PlanePoint c, PlanePoint d) implements PathPiece {
    /** One of the second degree. */
    static Cubic of(PlanePoint a, PlanePoint b, PlanePoint c) {
      return new Cubic(a, third(a, b), third(c, b), c);
    }

    private static PlanePoint third(PlanePoint end, PlanePoint control) {
      return new PlanePoint(
          end.x() + 2.0 / 3 * (control.x() - end.x()), end.y() + 2.0 / 3 * (control.y() - end.y()));
    }

    @Override
    public PlanePoint at(double t) {
      double u = 1 - t;
      double p = u * u * u;
      double q = 3 * u * u * t;
      double r = 3 * u * t * t;
      double s = t * t * t;
      return new PlanePoint(
          p * a.x() + q * b.x() + r * c.x() + s * d.x(),
          p * a.y() + q * b.y() + r * c.y() + s * d.y());
    }

    @Override
    public double speed(double t) {
      double u = 1 - t;
      double p = 3 * u * u;
      double q = 6 * u * t;
      double r = 3 * t * t;
      return length(
          p * (b.x() - a.x()) + q * (c.x() - b.x()) + r * (d.x() - c.x()),
          p * (b.y() - a.y()) + q * (c.y() - b.y()) + r * (d.y() - c.y()));
    }
  }

  /**
   * Part of an ellipse.
   *
   * @param middle its centre
   * @param one half of an axis, as a way from the centre
   * @param other half of the other axis
   * @param from where it begins, an angle in radians from the first axis to the other
   * @param turn how far it goes
   */
  record Arc(PlanePoint middle, PlanePoint one, PlanePoint other, double from, double turn)
      implements PathPiece {
    @Override
    public PlanePoint at(double t) {
      double cosine = StrictMath.cos(from + t * turn);
      double sine = StrictMath.sin(from + t * turn);
      return new PlanePoint(
          middle.x() + cosine * one.x() + sine * other.x(),
          middle.y() + cosine * one.y() + sine * other.y());
    }

    @Override
    public double speed(double t) {
      double cosine = turn * StrictMath.cos(from + t * turn);
      double sine = turn * StrictMath.sin(from + t * turn);
      return length(cosine * other.x() - sine * one.x(), cosine * other.y() - sine * one.y());
    }

    Arc moved(AffineTransform at) {
      return new Arc(place(at, middle), way(at, one), way(at, other), from, turn);
    }
  }

  private static double length(double x, double y) {
    return Math.sqrt(x * x + y * y);
  }

  /** A point where a transform leads. */
  static PlanePoint place(AffineTransform at, PlanePoint p) {
    return new PlanePoint(
        at.getScaleX() * p.x() + at.getShearX() * p.y() + at.getTranslateX(),
        at.getShearY() * p.x() + at.getScaleY() * p.y() + at.getTranslateY());
  }

  private static PlanePoint way(AffineTransform at, PlanePoint p) {
    return new PlanePoint(
        at.getScaleX() * p.x() + at.getShearX() * p.y(),
        at.getShearY() * p.x() + at.getScaleY() * p.y());
  }
}
