package dev.placket.pictures.svg.bridge;

import java.awt.Paint;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.CSSUtilities;
import org.apache.batik.bridge.SVGPatternElementBridge;
import org.apache.batik.bridge.SVGUtilities;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.PatternPaint;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/**
 * Content in units of the painted box begins at the corner of its tile (SVG 2, 14.3): Batik moves
 * it by the corner of the box besides.
 */
final class PatternBridge extends SVGPatternElementBridge {
  @Override
  public @Nullable Paint createPaint(
      BridgeContext context, Element pattern, Element painted, GraphicsNode node, float opacity) {
    boolean inBox =
        !chained(pattern, "patternUnits", context).equals("userSpaceOnUse")
            || inBoxUnits(context, pattern);
    if (inBox && Boxes.isFlat(node)) {
      return null;
    }
    Paint made = super.createPaint(context, pattern, painted, node, opacity);
    if (context.getElementData(pattern) instanceof GraphicsNode content) {
      PaintOrder.apply(content, context);
      content.setClip(CSSUtilities.convertClipPath(pattern, content, context));
      content.setComposite(CSSUtilities.convertOpacity(pattern));
    }
    Rectangle2D box = node.getGeometryBounds();
    if (!(made instanceof PatternPaint paint) || box == null || !inBoxUnits(context, pattern)) {
      return made;
    }
    Rectangle2D tile = paint.getPatternRect();
    AffineTransform at = AffineTransform.getTranslateInstance(tile.getX(), tile.getY());
    at.scale(box.getWidth(), box.getHeight());
    GraphicsNode content = paint.getGraphicsNode();
    content.setTransform(at);
    boolean overflows = !CSSUtilities.convertOverflow(pattern);
    return new PatternPaint(content, tile, overflows, paint.getPatternTransform());
  }

  /** A viewBox takes the place of the units of the content. */
  private static boolean inBoxUnits(BridgeContext context, Element pattern) {
    return chained(pattern, "patternContentUnits", context).equals("objectBoundingBox")
        && chained(pattern, "viewBox", context).isEmpty();
  }

  private static String chained(Element pattern, String name, BridgeContext context) {
    return SVGUtilities.getChainableAttributeNS(pattern, null, name, context);
  }
}
