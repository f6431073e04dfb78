package dev.placket.pictures.svg.bridge;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.CSSUtilities;
import org.apache.batik.bridge.SVGMaskElementBridge;
import org.apache.batik.bridge.SVGUtilities;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.filter.Mask;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * A mask as CSS Masking 1, 7, has it: an empty one hides all, and it may be clipped, masked and
 * counted by its alpha itself.
 */
final class MaskBridge extends SVGMaskElementBridge {
  @Override
  public Mask createMask(
      BridgeContext context, Element mask, Element masked, GraphicsNode maskedNode) {
    Rectangle2D region = SVGUtilities.convertMaskRegion(mask, masked, maskedNode, context);
    CompositeGraphicsNode content = new CompositeGraphicsNode();
    for (Node n = mask.getFirstChild(); n != null; n = n.getNextSibling()) {
      GraphicsNode built =
          n instanceof Element e ? context.getGVTBuilder().build(context, e) : null;
      if (built != null) {
        content.getChildren().add(built);
      }
    }
    Rectangle2D box = maskedNode.getGeometryBounds();
    if (mask.getAttributeNS(null, "maskContentUnits").strip().equals("objectBoundingBox")
        && box != null) {
      content.setTransform(
          new AffineTransform(box.getWidth(), 0, 0, box.getHeight(), box.getX(), box.getY()));
    }
    PaintOrder.apply(content, context);
    CompositeGraphicsNode whole = new CompositeGraphicsNode();
    whole.getChildren().add(content);
    // Both in the coordinates of the masked element, as the mask itself.
    whole.setClip(CSSUtilities.convertClipPath(mask, maskedNode, context));
    whole.setMask(CSSUtilities.convertMask(mask, maskedNode, context));
    return new DrawnMask(maskedNode.getGraphicsNodeRable(true), whole, region, byAlpha(mask));
  }

  private static boolean byAlpha(Element mask) {
    return OwnProperties.own(mask, "mask-type").equals("alpha");
  }
}
