package dev.placket.pictures.svg.bridge;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.CSSUtilities;
import org.apache.batik.bridge.SVGMarkerElementBridge;
import org.apache.batik.css.engine.SVGCSSEngine;
import org.apache.batik.ext.awt.image.renderable.ClipRable8Bit;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.Marker;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/**
 * A marker clipped in its own units: Batik's clip grows with the line also where the marker does
 * not (SVG 2, 13.7.1). One that is marked as reversed is turned by half a turn.
 */
final class MarkerBridge extends SVGMarkerElementBridge {
  /** Set by a rewriting on the copy of a marker for {@code orient="auto-start-reverse"}. */
  static final String REVERSED = "reversed";

  @Override
  public @Nullable Marker createMarker(BridgeContext context, Element marker, Element painted) {
    Marker made = super.createMarker(context, marker, painted);
    if (made == null) {
      return null;
    }
    GraphicsNode node = made.getMarkerNode();
    if (node.getClip() != null
        && marker.getAttributeNS(null, "markerUnits").equals("userSpaceOnUse")) {
      float line =
          CSSUtilities.getComputedStyle(painted, SVGCSSEngine.STROKE_WIDTH_INDEX).getFloatValue();
      if (line > 0) {
        Rectangle2D c = node.getClip().getClipPath().getBounds2D();
        Rectangle2D clip =
            new Rectangle2D.Double(
                c.getX() / line, c.getY() / line, c.getWidth() / line, c.getHeight() / line);
        node.setClip(new ClipRable8Bit(node.getGraphicsNodeRable(true), clip));
      }
    }
    PaintOrder.apply(node, context);
    dress((CompositeGraphicsNode) node, marker, context);
    if (!marker.hasAttributeNS(null, REVERSED)) {
      return made;
    }
    CompositeGraphicsNode turned = new CompositeGraphicsNode();
    turned.getChildren().add(node);
    turned.setTransform(
        AffineTransform.getRotateInstance(Math.PI, made.getRef().getX(), made.getRef().getY()));
    return new Marker(turned, made.getRef(), Double.NaN);
  }

  /** Clip, mask and opacity of the marker itself count in the units of what it holds. */
  private static void dress(CompositeGraphicsNode whole, Element marker, BridgeContext context) {
    CompositeGraphicsNode outer = whole;
    if (whole.getTransform() == null && whole.get(0) instanceof CompositeGraphicsNode inner) {
      outer = inner;
    }
    CompositeGraphicsNode content = new CompositeGraphicsNode();
    while (!outer.isEmpty()) {
      content.add(outer.remove(0));
    }
    outer.add(content);
    content.setComposite(CSSUtilities.convertOpacity(marker));
    content.setClip(CSSUtilities.convertClipPath(marker, content, context));
    content.setMask(CSSUtilities.convertMask(marker, content, context));
  }
}
