package dev.placket.layout.image;

import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.Composite;
import java.awt.Paint;
import java.text.AttributedCharacterIterator;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Set;
import org.apache.batik.bridge.TextNode;
import org.apache.batik.ext.awt.LinearGradientPaint;
import org.apache.batik.ext.awt.MultipleGradientPaint;
import org.apache.batik.ext.awt.RadialGradientPaint;
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
import org.apache.batik.gvt.text.GVTAttributedCharacterIterator;
import org.apache.batik.gvt.text.TextPaintInfo;
import org.jspecify.annotations.Nullable;

/**
 * Moves the opacity of groups and elements into the paint of what they hold, so that nothing needs
 * a layer of pixels and a page keeps its paths.
 */
final class OpacityFolding {
  private final Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());
  private boolean group;
  private boolean filter;

  /** Whether a group, and not only a single shape, was folded: overlaps are then seen. */
  boolean foldedGroup() {
    return group;
  }

  /** Whether a filter was left out. */
  boolean leftOutFilter() {
    return filter;
  }

  void fold(GraphicsNode node, float opacity) {
    float now = opacity * own(node);
    if (node.getFilter() != null) {
      node.setFilter(null);
      filter = true;
    }
    if (node instanceof CompositeGraphicsNode parent) {
      for (Object child : parent.getChildren()) {
        fold((GraphicsNode) child, now);
      }
    } else if (node instanceof ShapeNode shape && seen.add(shape)) {
      if (now < 1) {
        fold(shape.getShapePainter(), now);
      }
      foldWithin(shape.getShapePainter(), now);
    } else if (now < 1 && node instanceof TextNode text) {
      fold(text, now);
    }
  }

  private float own(GraphicsNode node) {
    Composite composite = node.getComposite();
    if (!(composite instanceof AlphaComposite alpha)) {
      return 1;
    }
    node.setComposite(AlphaComposite.SrcOver);
    if (alpha.getAlpha() < 1 && node instanceof CompositeGraphicsNode parent) {
      group |= parent.size() > 1;
    }
    return alpha.getAlpha();
  }

  private void fold(@Nullable ShapePainter painter, float opacity) {
    if (painter instanceof CompositeShapePainter several) {
      for (int i = 0; i < several.getShapePainterCount(); i++) {
        fold(several.getShapePainter(i), opacity);
      }
    } else if (painter instanceof FillShapePainter fill) {
      fill.setPaint(faded(fill.getPaint(), opacity));
    } else if (painter instanceof StrokeShapePainter stroke) {
      stroke.setPaint(faded(stroke.getPaint(), opacity));
    }
  }

  /** Markers and patterns hold parts of their own, which would otherwise be drawn with pixels. */
  private void foldWithin(@Nullable ShapePainter painter, float opacity) {
    if (painter instanceof CompositeShapePainter several) {
      for (int i = 0; i < several.getShapePainterCount(); i++) {
        foldWithin(several.getShapePainter(i), opacity);
      }
    } else if (painter instanceof MarkerShapePainter markers) {
      foldOnce(markers.getStartMarker(), opacity);
      foldOnce(markers.getMiddleMarker(), opacity);
      foldOnce(markers.getEndMarker(), opacity);
    } else if (painter instanceof FillShapePainter fill) {
      foldOnce(fill.getPaint(), opacity);
    } else if (painter instanceof StrokeShapePainter stroke) {
      foldOnce(stroke.getPaint(), opacity);
    }
  }

  private void foldOnce(@Nullable Object holder, float opacity) {
    GraphicsNode node =
        holder instanceof Marker marker
            ? marker.getMarkerNode()
            : holder instanceof PatternPaint pattern ? pattern.getGraphicsNode() : null;
    if (node != null && seen.add(node)) {
      fold(node, opacity);
    }
  }

  private void fold(TextNode text, float opacity) {
    AttributedCharacterIterator run = text.getAttributedCharacterIterator();
    if (run == null) {
      return;
    }
    for (char c = run.first(); c != AttributedCharacterIterator.DONE; c = run.next()) {
      Object info = run.getAttribute(GVTAttributedCharacterIterator.TextAttribute.PAINT_INFO);
      if (info instanceof TextPaintInfo paint && seen.add(paint)) {
        paint.fillPaint = faded(paint.fillPaint, opacity);
        paint.strokePaint = faded(paint.strokePaint, opacity);
        paint.underlinePaint = faded(paint.underlinePaint, opacity);
        paint.overlinePaint = faded(paint.overlinePaint, opacity);
        paint.strikethroughPaint = faded(paint.strikethroughPaint, opacity);
      }
    }
  }

  @SuppressWarnings("NullAway") // Batik marks no nulls; a null paint stays one.
  private static Paint faded(@Nullable Paint paint, float opacity) {
    if (paint instanceof Color c) {
      return faded(c, opacity);
    }
    if (paint instanceof LinearGradientPaint g) {
      return new LinearGradientPaint(
          g.getStartPoint(),
          g.getEndPoint(),
          g.getFractions(),
          faded(g.getColors(), opacity),
          g.getCycleMethod(),
          g.getColorSpace(),
          g.getTransform());
    }
    if (paint instanceof RadialGradientPaint g) {
      return new RadialGradientPaint(
          g.getCenterPoint(),
          g.getRadius(),
          g.getFocusPoint(),
          g.getFractions(),
          faded(g.getColors(), opacity),
          g.getCycleMethod(),
          g.getColorSpace(),
          g.getTransform());
    }
    assert !(paint instanceof MultipleGradientPaint);
    return paint;
  }

  private static Color[] faded(Color[] colors, float opacity) {
    Color[] out = new Color[colors.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = faded(colors[i], opacity);
    }
    return out;
  }

  private static Color faded(Color c, float opacity) {
    return new Color(c.getRed(), c.getGreen(), c.getBlue(), Math.round(c.getAlpha() * opacity));
  }
}
