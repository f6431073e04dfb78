package dev.placket.pictures.svg.measure;

import dev.placket.pictures.base.FineDetail;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.font.TextAttribute;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.text.AttributedCharacterIterator;
import org.apache.batik.bridge.TextNode;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.CompositeShapePainter;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.ShapeNode;
import org.apache.batik.gvt.ShapePainter;
import org.apache.batik.gvt.StrokeShapePainter;
import org.jspecify.annotations.Nullable;

/**
 * Looks for the finest line, lettering and stitch gap of a drawing: widths and dashes from its
 * strokes, heights from its fonts, all transforms applied. Lettering turned into paths is not seen
 * as lettering.
 */
public final class FineParts {
  /** Capitals are about this much of the font size in the usual faces (from memory). */
  private static final double CAPITAL = 0.7;

  private static final int WHITE = 250;
  private static final int FAINT = 8;

  private final Rectangle2D shown;
  private double line = Double.POSITIVE_INFINITY;
  private double lettering = Double.POSITIVE_INFINITY;
  private double gap = Double.POSITIVE_INFINITY;

  private FineParts(Rectangle2D shown) {
    this.shown = shown;
  }

  /** What is finest among a node and all it holds, of what lies in the part that is shown. */
  public static FineDetail of(GraphicsNode node, AffineTransform toUnits, Rectangle2D shown) {
    FineParts parts = new FineParts(shown);
    parts.add(node, toUnits);
    return new FineDetail(found(parts.line), found(parts.lettering), found(parts.gap));
  }

  private static @Nullable Double found(double value) {
    return Double.isInfinite(value) ? null : value;
  }

  private void add(GraphicsNode node, AffineTransform parent) {
    if (!node.isVisible() && !(node instanceof CompositeGraphicsNode)) {
      return;
    }
    AffineTransform at = new AffineTransform(parent);
    if (node.getTransform() != null) {
      at.concatenate(node.getTransform());
    }
    if (node instanceof CompositeGraphicsNode group) {
      for (Object child : group.getChildren()) {
        add((GraphicsNode) child, at);
      }
    } else if (node instanceof ShapeNode shape) {
      add(shape.getShapePainter(), at);
    } else if (node instanceof TextNode text && text.getOutline() != null) {
      add(text, at);
    }
  }

  private void add(@Nullable ShapePainter painter, AffineTransform at) {
    if (painter instanceof CompositeShapePainter several) {
      for (int i = 0; i < several.getShapePainterCount(); i++) {
        add(several.getShapePainter(i), at);
      }
    } else if (painter instanceof StrokeShapePainter stroke
        && stroke.getStroke() instanceof BasicStroke pen
        && inked(stroke.getPaint())
        && seen(stroke.getShape(), at)) {
      line = Math.min(line, pen.getLineWidth() * least(at));
      gap = Math.min(gap, gap(pen) * least(at));
    }
  }

  private void add(TextNode text, AffineTransform at) {
    AttributedCharacterIterator run = text.getAttributedCharacterIterator();
    if (run == null || !seen(text.getOutline(), at)) {
      return;
    }
    for (char c = run.first(); c != AttributedCharacterIterator.DONE; c = run.next()) {
      if (!Character.isWhitespace(c) && run.getAttribute(TextAttribute.SIZE) instanceof Number n) {
        lettering = Math.min(lettering, CAPITAL * n.doubleValue() * least(at));
      }
    }
  }

  /** The narrowest gap of a dash pattern, after caps that reach half a line width into each end. */
  private static double gap(BasicStroke pen) {
    float[] dashes = pen.getDashArray();
    double narrowest = Double.POSITIVE_INFINITY;
    if (dashes == null) {
      return narrowest;
    }
    double caps = pen.getEndCap() == BasicStroke.CAP_BUTT ? 0 : pen.getLineWidth();
    // With an odd number every length is a gap in one turn and a dash in the next.
    boolean odd = dashes.length % 2 == 1;
    for (int i = odd ? 0 : 1; i < dashes.length; i += odd ? 1 : 2) {
      if (dashes[i] > 0) {
        narrowest = Math.min(narrowest, Math.max(0, dashes[i] - caps));
      }
    }
    return narrowest;
  }

  private boolean seen(Shape shape, AffineTransform at) {
    Rectangle2D there = at.createTransformedShape(shape).getBounds2D();
    // A straight line has a box without area, which intersects nothing.
    return there.getMaxX() >= shown.getMinX()
        && there.getMinX() <= shown.getMaxX()
        && there.getMaxY() >= shown.getMinY()
        && there.getMinY() <= shown.getMaxY();
  }

  private static boolean inked(@Nullable Paint paint) {
    if (!(paint instanceof Color c)) {
      return paint != null;
    }
    return c.getAlpha() > FAINT
        && Math.min(c.getRed(), Math.min(c.getGreen(), c.getBlue())) < WHITE;
  }

  /** The scale of a transform in the direction in which it is least: its lesser singular value. */
  private static double least(AffineTransform t) {
    double a = t.getScaleX();
    double b = t.getShearY();
    double c = t.getShearX();
    double d = t.getScaleY();
    double sum = Math.hypot(a + d, b - c);
    double difference = Math.hypot(a - d, b + c);
    return Math.abs(sum - difference) / 2;
  }
}
