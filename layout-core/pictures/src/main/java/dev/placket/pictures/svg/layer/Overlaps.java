package dev.placket.pictures.svg.layer;

import java.awt.Color;
import java.awt.Paint;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.apache.batik.bridge.TextNode;
import org.apache.batik.ext.awt.LinearGradientPaint;
import org.apache.batik.ext.awt.RadialGradientPaint;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.CompositeShapePainter;
import org.apache.batik.gvt.FillShapePainter;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.MarkerShapePainter;
import org.apache.batik.gvt.ShapeNode;
import org.apache.batik.gvt.ShapePainter;
import org.apache.batik.gvt.StrokeShapePainter;
import org.jspecify.annotations.Nullable;

/**
 * Whether parts of a node may lie over one another, so that fading each is not fading the whole.
 * Judged by boxes: what may overlap is taken to.
 */
final class Overlaps {
  /** So many parts are not compared in pairs. */
  private static final int PARTS = 300;

  private final List<Rectangle2D> boxes = new ArrayList<>();
  private boolean within;

  private Overlaps() {}

  static boolean in(GraphicsNode node) {
    Overlaps o = new Overlaps();
    o.add(node, new AffineTransform());
    return o.within || o.boxes.size() > PARTS || o.anyTwoMeet();
  }

  private boolean anyTwoMeet() {
    for (int i = 0; i < boxes.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (boxes.get(i).intersects(boxes.get(j))) {
          return true;
        }
      }
    }
    return false;
  }

  private void add(GraphicsNode node, AffineTransform parent) {
    if (within || boxes.size() > PARTS) {
      return;
    }
    AffineTransform at = new AffineTransform(parent);
    if (node.getTransform() != null) {
      at.concatenate(node.getTransform());
    }
    if (node instanceof CompositeGraphicsNode group) {
      for (int i = 0; i < group.size(); i++) {
        add((GraphicsNode) group.get(i), at);
      }
    } else if (node instanceof ShapeNode shape) {
      add(shape, shape.getShapePainter(), at);
    } else {
      add(node.getPrimitiveBounds(), at);
      within |= node instanceof TextNode text && strokedToo(text);
    }
  }

  private void add(ShapeNode shape, @Nullable ShapePainter painter, AffineTransform at) {
    int parts = parts(painter);
    within |= parts > 1;
    if (parts > 0 && shape.isVisible()) {
      add(shape.getPrimitiveBounds(), at);
    }
  }

  private void add(@Nullable Rectangle2D box, AffineTransform at) {
    if (box != null) {
      boxes.add(at.createTransformedShape(box).getBounds2D());
    }
  }

  /** How many of fill, stroke and markers are painted; two for a paint that cannot be faded. */
  private static int parts(@Nullable ShapePainter painter) {
    if (painter instanceof CompositeShapePainter several) {
      int sum = 0;
      for (int i = 0; i < several.getShapePainterCount(); i++) {
        sum += parts(several.getShapePainter(i));
      }
      return sum;
    }
    if (painter instanceof FillShapePainter fill) {
      return parts(fill.getPaint());
    }
    if (painter instanceof StrokeShapePainter stroke) {
      return stroke.getStroke() == null ? 0 : parts(stroke.getPaint());
    }
    return painter instanceof MarkerShapePainter ? 2 : 0;
  }

  private static int parts(@Nullable Paint paint) {
    if (paint == null || (paint instanceof Color c && c.getAlpha() == 0)) {
      return 0;
    }
    boolean fades =
        paint instanceof Color
            || paint instanceof LinearGradientPaint
            || paint instanceof RadialGradientPaint;
    return fades ? 1 : 2;
  }

  private static boolean strokedToo(TextNode text) {
    return TextPaints.of(text).stream()
        .anyMatch(
            p ->
                parts(p.fillPaint) + parts(p.strokePaint) > 1
                    || p.underlinePaint != null
                    || p.overlinePaint != null
                    || p.strikethroughPaint != null);
  }
}
