package dev.placket.pictures.svg.measure;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.fault.Fault;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.ShapeNode;

/**
 * Refuses paths that reach so far that readers of the page leave them out without a word: their
 * numbers hold no such place beside the places in the view.
 */
public final class FarPaths {
  /**
   * In sides of the view. Poppler draws a line of a million sides, and not one of ten million; no
   * drawing needs either.
   */
  private static final double MOST = 1e6;

  private final String name;
  private final double most;

  private FarPaths(String name, double most) {
    this.name = name;
    this.most = most;
  }

  /**
   * Checks a drawing.
   *
   * @param side the longer side of its view, in its units
   * @throws PictureException naming the file
   */
  public static void check(String name, GraphicsNode node, double side) throws PictureException {
    new FarPaths(name, MOST * side).check(node, new AffineTransform());
  }

  private void check(GraphicsNode node, AffineTransform parent) throws PictureException {
    AffineTransform at = new AffineTransform(parent);
    if (node.getTransform() != null) {
      at.concatenate(node.getTransform());
    }
    if (node instanceof CompositeGraphicsNode group) {
      for (Object child : group.getChildren()) {
        check((GraphicsNode) child, at);
      }
    } else if (node instanceof ShapeNode shape && shape.isVisible() && shape.getShape() != null) {
      check(shape.getShape(), at);
    }
  }

  private void check(Shape shape, AffineTransform at) throws PictureException {
    double[] c = new double[6];
    for (PathIterator i = shape.getPathIterator(at); !i.isDone(); i.next()) {
      int count =
          switch (i.currentSegment(c)) {
            case PathIterator.SEG_CLOSE -> 0;
            case PathIterator.SEG_CUBICTO -> 6;
            case PathIterator.SEG_QUADTO -> 4;
            default -> 2;
          };
      for (int k = 0; k < count; k++) {
        if (!(Math.abs(c[k]) <= most)) {
          throw new PictureException(
              Fault.content(
                      name, "a path reaches " + far(c[k]) + " units away, far beyond the view")
                  .remedy("end it near the view; readers of PDF leave out such lines"));
        }
      }
    }
  }

  private static String far(double units) {
    return Double.isFinite(units)
        ? String.format(java.util.Locale.ROOT, "%.0e", Math.abs(units))
        : "endlessly many";
  }
}
