package dev.placket.pictures.svg.layer;

import dev.placket.pictures.base.Blend;
import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.Composite;
import java.awt.Paint;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Set;
import org.apache.batik.bridge.TextNode;
import org.apache.batik.ext.awt.LinearGradientPaint;
import org.apache.batik.ext.awt.MultipleGradientPaint;
import org.apache.batik.ext.awt.RadialGradientPaint;
import org.apache.batik.ext.awt.image.renderable.Filter;
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
import org.apache.batik.gvt.text.TextPaintInfo;
import org.jspecify.annotations.Nullable;

/**
 * Moves the opacity of groups and elements into the paint of what they hold, so that nothing needs
 * a layer and a page keeps its paths. What overlaps, blends or is masked is planned as a layer.
 */
public final class OpacityFolding {
  private final Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());
  private final LayerPlan plan = new LayerPlan();
  private final Blending blending;

  /** How deep in markers and patterns, which are painted without layers. */
  private int repeated;

  private boolean overlaps;

  /** Folding for one drawing, which fills a new plan. */
  public OpacityFolding(Blending blending) {
    this.blending = blending;
  }

  /** What is painted as a layer. */
  public LayerPlan plan() {
    return plan;
  }

  /** Whether parts of a faded marker or pattern may show their overlaps. */
  public boolean showsOverlaps() {
    return overlaps;
  }

  /** Folds a node that lies in parts of this opacity, from 0 to 1. */
  public void fold(GraphicsNode node, float opacity) {
    float now = opacity * own(node);
    node.setFilter(null);
    boolean masked = node.getMask() != null;
    if (masked && seen.add(node.getMask())) {
      fold(node.getMask().getMaskNode(), 1);
    }
    Blend blend = blending.of(node);
    boolean layer = blend != Blend.NORMAL || blending.isIsolated(node, now < 1);
    boolean whole = layer || (now < 1 && (masked || Overlaps.in(node)));
    if (whole && repeated == 0) {
      plan.put(node, now, blend);
      now = 1;
    }
    overlaps |= whole && repeated > 0;
    if (node instanceof CompositeGraphicsNode parent) {
      for (int i = 0; i < parent.size(); i++) {
        fold((GraphicsNode) parent.get(i), now);
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

  private static float own(GraphicsNode node) {
    Composite composite = node.getComposite();
    if (!(composite instanceof AlphaComposite alpha)) {
      return 1;
    }
    node.setComposite(AlphaComposite.SrcOver);
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
      // The opacity of what is filled with a pattern stands in a filter of its content.
      Filter fading = holder instanceof PatternPaint ? node.getFilter() : null;
      repeated++;
      fold(node, opacity);
      repeated--;
      node.setFilter(fading);
    }
  }

  private void fold(TextNode text, float opacity) {
    for (TextPaintInfo paint : TextPaints.of(text)) {
      if (seen.add(paint)) {
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
