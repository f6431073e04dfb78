package dev.placket.pictures.svg.measure;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.ReadLimit;
import dev.placket.pictures.shape.BoxPairs;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import org.apache.batik.bridge.TextNode;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.CompositeShapePainter;
import org.apache.batik.gvt.FillShapePainter;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.Marker;
import org.apache.batik.gvt.MarkerShapePainter;
import org.apache.batik.gvt.PatternPaint;
import org.apache.batik.gvt.ShapeNode;
import org.apache.batik.gvt.ShapePainter;
import org.apache.batik.gvt.StrokeShapePainter;
import org.jspecify.annotations.Nullable;

/**
 * Counts the steps that drawing takes once, before anything is drawn. A step is about the work of
 * one segment of a path; all else is weighed against that.
 */
public final class DrawingWork {
  /** For painting over all of the view once. */
  private static final double COVER = 400;

  /** Of its box, what a stroke covers or asks whether it covers. */
  private static final double STROKED = 0.25;

  /** For a line through all of the view, with no other on its path. */
  private static final double CROSSING = 35;

  /** For a mask over all of the view, which is drawn with pixels. */
  private static final double MASK = 500_000;

  /** For each pair of segments that may cross where areas are cut. */
  private static final double PAIR = 80;

  private static final double CHARACTER = 60;

  private final String name;
  private final Rectangle2D view;
  private final long most;
  private double steps;

  private DrawingWork(String name, Rectangle2D view, long most) {
    this.name = name;
    this.view = view;
    this.most = most;
  }

  /**
   * Refuses what takes more steps than the limit.
   *
   * @param view what fills the page, in the coordinates that the root's parent has
   */
  public static void check(String name, GraphicsNode root, Rectangle2D view, ReadLimits limits)
      throws PictureException {
    new DrawingWork(name, view, limits.steps()).add(root, new AffineTransform());
  }

  private void spend(double more) throws PictureException {
    steps += more;
    if (steps > most) {
      throw PictureException.over(
          ReadLimit.STEPS,
          Fault.limit(name, "drawing it takes more than the limit of " + most + " steps")
              .remedy("draw it with fewer and simpler paths, clips, masks, markers or patterns"));
    }
  }

  private void add(GraphicsNode node, AffineTransform parent) throws PictureException {
    spend(1);
    AffineTransform at = new AffineTransform(parent);
    if (node.getTransform() != null) {
      at.concatenate(node.getTransform());
    }
    if (node.getClip() != null && node.getClip().getClipPath() != null) {
      Shape clip = node.getClip().getClipPath();
      spend(segments(clip) + PAIR * BoxPairs.of(most, clip));
    }
    if (node.getMask() != null && node.getMask().getMaskNode() != null) {
      spend(MASK * share(at.createTransformedShape(node.getMask().getBounds2D())));
      add(node.getMask().getMaskNode(), at);
    }
    if (node instanceof CompositeGraphicsNode group) {
      for (Object child : group.getChildren()) {
        add((GraphicsNode) child, at);
      }
    } else if (node instanceof ShapeNode shape) {
      add(shape.getShapePainter(), at);
    } else if (node instanceof TextNode text && text.getAttributedCharacterIterator() != null) {
      spend(CHARACTER * text.getAttributedCharacterIterator().getEndIndex());
    }
  }

  private void add(@Nullable ShapePainter painter, AffineTransform at) throws PictureException {
    if (painter instanceof CompositeShapePainter several) {
      for (int i = 0; i < several.getShapePainterCount(); i++) {
        add(several.getShapePainter(i), at);
      }
    } else if (painter instanceof FillShapePainter fill && fill.getPaint() != null) {
      shape(fill.getShape(), at, 1);
      pattern(fill.getPaint(), at);
    } else if (painter instanceof StrokeShapePainter stroke && stroke.getPaint() != null) {
      shape(stroke.getShape(), at, 2);
      pattern(stroke.getPaint(), at);
    } else if (painter instanceof MarkerShapePainter markers) {
      marker(markers.getStartMarker(), 1, at);
      marker(markers.getEndMarker(), 1, at);
      marker(markers.getMiddleMarker(), segments(markers.getShape()), at);
    }
  }

  private void pattern(Object paint, AffineTransform at) throws PictureException {
    if (paint instanceof PatternPaint pattern) {
      add(pattern.getGraphicsNode(), at);
    }
  }

  /** Each corner has its own copy; where a copy lands does not change what it costs by much. */
  private void marker(@Nullable Marker marker, double times, AffineTransform at)
      throws PictureException {
    if (marker != null && marker.getMarkerNode() != null) {
      double before = steps;
      add(marker.getMarkerNode(), at);
      spend((steps - before + 10) * Math.max(0, times - 1));
    }
  }

  /**
   * Its segments, the pixels that it may cover, and its crossings with the lines of the screen,
   * which are put in order for each line.
   */
  private void shape(Shape shape, AffineTransform at, double sides) throws PictureException {
    double[] c = new double[6];
    double y = 0;
    double lines = 0;
    double high = 0;
    double low = Double.POSITIVE_INFINITY;
    double n = 1;
    for (PathIterator i = shape.getPathIterator(at); !i.isDone(); i.next()) {
      int kind = i.currentSegment(c);
      int last = kind == PathIterator.SEG_CUBICTO ? 4 : kind == PathIterator.SEG_QUADTO ? 2 : 0;
      n++;
      if (kind == PathIterator.SEG_CLOSE) {
        continue;
      }
      double nowY = Math.max(view.getMinY(), Math.min(view.getMaxY(), c[last + 1]));
      if (kind != PathIterator.SEG_MOVETO) {
        lines += Math.abs(nowY - y);
      }
      low = Math.min(low, nowY);
      high = Math.max(high, nowY);
      y = nowY;
    }
    double crossed = sides * lines / view.getHeight();
    double height = Math.max(1e-3, (high - low) / view.getHeight());
    double each = crossed / height;
    spend(sides * n + CROSSING * crossed * Math.log(each + 2));
    Rectangle2D box = shape.getBounds2D();
    double filled = sides == 1 ? 1 : STROKED;
    spend(COVER * filled * share(at.createTransformedShape(box)));
  }

  /** How much of the view a shape's box takes. */
  private double share(Shape shape) {
    Rectangle2D box = shape.getBounds2D().createIntersection(view);
    return box.isEmpty()
        ? 0
        : box.getWidth() * box.getHeight() / (view.getWidth() * view.getHeight());
  }

  private static double segments(Shape shape) {
    double n = 0;
    for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
      n++;
    }
    return n;
  }
}
