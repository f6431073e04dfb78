package dev.placket.pictures.svg.layer;

import dev.placket.pictures.base.Blend;
import dev.placket.pictures.base.Layers;
import dev.placket.pictures.svg.bridge.DrawnMask;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import org.apache.batik.ext.awt.RenderingHintsKeyExt;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.ShapeNode;
import org.apache.batik.gvt.filter.Mask;

/**
 * Paints a tree of nodes. Batik's own painting makes an image of whatever is faded or masked as a
 * whole; here that is a layer, which a page can keep as paths.
 */
public final class NodePainter {
  private final LayerPlan plan;
  private final Layers layers;

  /** A painter of nodes, by the plan of their drawing. */
  public NodePainter(LayerPlan plan, Layers layers) {
    this.plan = plan;
    this.layers = layers;
  }

  /** Paints a node in the coordinates of its parent. */
  public void paint(GraphicsNode node, Graphics2D g) {
    if (node instanceof ShapeNode && !node.isVisible()) {
      return;
    }
    Rectangle2D bounds = node.getBounds();
    if (bounds == null) {
      return;
    }
    if (node.getClip() == null) {
      // No copy, since on a page each is saved and restored.
      RenderingHints hints = node.getRenderingHints() == null ? null : g.getRenderingHints();
      AffineTransform at = g.getTransform();
      paintIn(node, g, bounds);
      if (hints != null) {
        g.setRenderingHints(hints);
      }
      g.setTransform(at);
    } else {
      Graphics2D own = (Graphics2D) g.create();
      paintIn(node, own, bounds);
      own.dispose();
    }
  }

  private void paintIn(GraphicsNode node, Graphics2D g, Rectangle2D bounds) {
    if (node.getRenderingHints() != null) {
      g.addRenderingHints(node.getRenderingHints());
    }
    if (node.getTransform() != null) {
      g.transform(node.getTransform());
    }
    if (node.getClip() != null) {
      g.clip(node.getClip().getClipPath());
    }
    Shape clip = g.getClip();
    g.setRenderingHint(RenderingHintsKeyExt.KEY_AREA_OF_INTEREST, clip);
    if (clip == null || bounds.intersects(clip.getBounds2D())) {
      paintShown(node, g);
    }
  }

  private void paintShown(GraphicsNode node, Graphics2D g) {
    LayerPlan.Spec spec = plan.of(node);
    Mask mask = node.getMask();
    if (spec == null && mask == null) {
      content(node, g);
      return;
    }
    layers.paint(
        g,
        new Layers.Layer(
            own -> content(node, own),
            spec == null ? 1 : spec.opacity(),
            spec == null ? Blend.NORMAL : spec.blend(),
            mask == null
                ? null
                : new Layers.Mask(own -> mask(mask, own), DrawnMask.isByAlpha(mask))));
  }

  private void mask(Mask mask, Graphics2D g) {
    g.clip(mask.getFilterRegion());
    paint(mask.getMaskNode(), g);
  }

  private void content(GraphicsNode node, Graphics2D g) {
    if (node instanceof CompositeGraphicsNode group) {
      for (int i = 0; i < group.size(); i++) {
        paint((GraphicsNode) group.get(i), g);
      }
    } else {
      node.primitivePaint(g);
    }
  }
}
