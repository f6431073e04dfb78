package dev.placket.pictures.path;

import dev.placket.layout.units.PlanePoint;
import dev.placket.pictures.path.PathPiece.Arc;
import dev.placket.pictures.path.PathPiece.Cubic;
import dev.placket.pictures.path.PathPiece.Line;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.util.ArrayList;
import java.util.List;
import org.apache.batik.ext.awt.geom.ExtendedPathIterator;
import org.apache.batik.ext.awt.geom.ExtendedShape;
import org.apache.batik.ext.awt.geom.ShapeExtender;
import org.jspecify.annotations.Nullable;

/** Takes the shape of an element apart into pieces that can be measured. */
public final class PathPieces {
  private static final double TURN = 2 * Math.PI;

  private final AffineTransform at;
  private final List<PathPiece> pieces = new ArrayList<>();
  private PlanePoint start = new PlanePoint(0, 0);
  private PlanePoint last = start;
  private int parts;
  private boolean closed;

  private PathPieces(AffineTransform at) {
    this.at = at;
  }

  /**
   * A path in drawing units; null of a shape of no piece or of several parts, which has no one way.
   *
   * @param at from the shape's own space to drawing units
   */
  public static @Nullable DrawnPath of(Shape shape, AffineTransform at) {
    PathPieces all = new PathPieces(at);
    if (shape instanceof Ellipse2D e) {
      PlanePoint middle = new PlanePoint(e.getCenterX(), e.getCenterY());
      PlanePoint one = new PlanePoint(e.getWidth() / 2, 0);
      PlanePoint other = new PlanePoint(0, e.getHeight() / 2);
      return new DrawnPath(List.of(new Arc(middle, one, other, 0, TURN).moved(at)), true);
    }
    ExtendedShape its = shape instanceof ExtendedShape e ? e : new ShapeExtender(shape);
    all.read(its.getExtendedPathIterator());
    return all.pieces.isEmpty() || all.parts > 1 ? null : new DrawnPath(all.pieces, all.closed);
  }

  private void read(ExtendedPathIterator i) {
    float[] c = new float[7];
    for (; !i.isDone(); i.next()) {
      switch (i.currentSegment(c)) {
        case ExtendedPathIterator.SEG_MOVETO -> move(new PlanePoint(c[0], c[1]));
        case ExtendedPathIterator.SEG_LINETO -> line(new PlanePoint(c[0], c[1]));
        case ExtendedPathIterator.SEG_QUADTO -> {
          PlanePoint end = new PlanePoint(c[2], c[3]);
          add(Cubic.of(there(last), there(new PlanePoint(c[0], c[1])), there(end)), end);
        }
        case ExtendedPathIterator.SEG_CUBICTO -> {
          PlanePoint b = there(new PlanePoint(c[0], c[1]));
          PlanePoint end = new PlanePoint(c[4], c[5]);
          add(new Cubic(there(last), b, there(new PlanePoint(c[2], c[3])), there(end)), end);
        }
        case ExtendedPathIterator.SEG_ARCTO -> arc(c);
        case ExtendedPathIterator.SEG_CLOSE -> {
          line(start);
          closed = true;
        }
        default -> {
          // No other kinds.
        }
      }
    }
  }

  private PlanePoint there(PlanePoint p) {
    return PathPiece.place(at, p);
  }

  private void move(PlanePoint to) {
    start = to;
    last = to;
    parts++;
  }

  private void line(PlanePoint to) {
    if (!to.equals(last)) {
      add(new Line(there(last), there(to)), to);
    }
  }

  private void add(PathPiece piece, PlanePoint end) {
    pieces.add(piece);
    last = end;
  }

  /** From end points to the centre: SVG 2, appendix B.2.4 and B.2.5. */
  private void arc(float[] c) {
    PlanePoint end = new PlanePoint(c[5], c[6]);
    double rx = Math.abs(c[0]);
    double ry = Math.abs(c[1]);
    if (rx == 0 || ry == 0) {
      line(end);
      return;
    }
    if (end.equals(last)) {
      return;
    }
    double angle = StrictMath.toRadians(c[2]);
    double cosine = StrictMath.cos(angle);
    double sine = StrictMath.sin(angle);
    double halfX = (last.x() - end.x()) / 2;
    double halfY = (last.y() - end.y()) / 2;
    double x = cosine * halfX + sine * halfY;
    double y = cosine * halfY - sine * halfX;
    double over = x * x / (rx * rx) + y * y / (ry * ry);
    double grow = over > 1 ? Math.sqrt(over) : 1;
    rx *= grow;
    ry *= grow;
    double square = Math.max(0, 1 / (x * x / (rx * rx) + y * y / (ry * ry)) - 1);
    double root = Math.sqrt(square) * ((c[3] != 0) == (c[4] != 0) ? -1 : 1);
    double cx = root * rx * y / ry;
    double cy = -root * ry * x / rx;
    double from = StrictMath.atan2((y - cy) / ry, (x - cx) / rx);
    double to = StrictMath.atan2((-y - cy) / ry, (-x - cx) / rx);
    double turn = to - from;
    if (c[4] != 0 && turn < 0) {
      turn += TURN;
    } else if (c[4] == 0 && turn > 0) {
      turn -= TURN;
    }
    PlanePoint middle =
        new PlanePoint(
            cosine * cx - sine * cy + (last.x() + end.x()) / 2,
            sine * cx + cosine * cy + (last.y() + end.y()) / 2);
    PlanePoint one = new PlanePoint(rx * cosine, rx * sine);
    PlanePoint other = new PlanePoint(-ry * sine, ry * cosine);
    add(new Arc(middle, one, other, from, turn).moved(at), end);
  }
}
