package dev.placket.pictures.svg.measure;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.ReadLimit;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
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
 * Counts the dashes and markers that the lines of a drawing come to, before any is drawn: a dash
 * array may be as fine as it likes, and each dash becomes a shape of its own.
 */
public final class DashCount {
  private final long most;
  private double count;

  private DashCount(long most) {
    this.most = most;
  }

  /** Refuses a drawing with more dashes and markers than the limit. */
  public static void check(String name, GraphicsNode root, ReadLimits limits)
      throws PictureException {
    DashCount c = new DashCount(limits.dashes());
    c.add(root, 1);
    if (c.count > c.most) {
      throw PictureException.over(
          ReadLimit.DASHES,
          Fault.limit(
                  name, "its lines come to more than " + limits.dashes() + " dashes and markers")
              .remedy("draw them with longer dashes"));
    }
  }

  private void add(GraphicsNode node, double times) {
    if (count > most) {
      return;
    }
    if (node.getMask() != null && node.getMask().getMaskNode() != null) {
      add(node.getMask().getMaskNode(), times);
    }
    if (node instanceof CompositeGraphicsNode group) {
      for (Object child : group.getChildren()) {
        add((GraphicsNode) child, times);
      }
    } else if (node instanceof ShapeNode shape) {
      add(shape.getShapePainter(), times);
    }
  }

  private void add(@Nullable ShapePainter painter, double times) {
    if (painter instanceof CompositeShapePainter several) {
      for (int i = 0; i < several.getShapePainterCount(); i++) {
        add(several.getShapePainter(i), times);
      }
    } else if (painter instanceof FillShapePainter fill) {
      if (fill.getPaint() instanceof PatternPaint pattern) {
        add(pattern.getGraphicsNode(), times);
      }
    } else if (painter instanceof StrokeShapePainter stroke) {
      if (stroke.getPaint() instanceof PatternPaint pattern) {
        add(pattern.getGraphicsNode(), times);
      }
      if (stroke.getPaint() != null && stroke.getStroke() instanceof BasicStroke pen) {
        count += times * dashes(stroke.getShape(), pen);
      }
    } else if (painter instanceof MarkerShapePainter markers) {
      marker(markers.getStartMarker(), times);
      marker(markers.getEndMarker(), times);
      marker(markers.getMiddleMarker(), times * corners(markers.getShape()));
    }
  }

  private void marker(@Nullable Marker marker, double times) {
    if (marker != null) {
      count += times;
      add(marker.getMarkerNode(), times);
    }
  }

  private static double dashes(Shape shape, BasicStroke pen) {
    float[] array = pen.getDashArray();
    if (array == null) {
      return 0;
    }
    double period = 0;
    for (float part : array) {
      period += part;
    }
    return length(shape) / period * array.length;
  }

  /** To a hundredth of the shape's size: a count needs no more. */
  private static double length(Shape shape) {
    Rectangle2D b = shape.getBounds2D();
    double flat = Math.max(1e-6, Math.max(b.getWidth(), b.getHeight()) / 100);
    double[] c = new double[6];
    double sum = 0;
    double x = 0;
    double y = 0;
    double startX = 0;
    double startY = 0;
    for (PathIterator i = new FlatteningPathIterator(shape.getPathIterator(null), flat, 6);
        !i.isDone();
        i.next()) {
      int kind = i.currentSegment(c);
      if (kind == PathIterator.SEG_CLOSE) {
        c[0] = startX;
        c[1] = startY;
      }
      if (kind == PathIterator.SEG_MOVETO) {
        startX = c[0];
        startY = c[1];
      } else {
        sum += Math.hypot(c[0] - x, c[1] - y);
      }
      x = c[0];
      y = c[1];
    }
    return sum;
  }

  private static int corners(Shape shape) {
    int n = 0;
    for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
      n++;
    }
    return n;
  }
}
