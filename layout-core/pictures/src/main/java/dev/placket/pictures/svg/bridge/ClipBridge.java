package dev.placket.pictures.svg.bridge;

import dev.placket.pictures.shape.TooManyCrossings;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Set;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.CSSUtilities;
import org.apache.batik.bridge.SVGClipPathElementBridge;
import org.apache.batik.bridge.SVGUtilities;
import org.apache.batik.ext.awt.image.renderable.ClipRable;
import org.apache.batik.ext.awt.image.renderable.ClipRable8Bit;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.ShapeNode;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * The region of a clipPath (CSS Masking 1, 5): the union of its visible shapes and text, each cut
 * by its own clip, all cut by the clip of the clipPath. Batik takes the inner clips away instead,
 * and an empty clipPath hides nothing there.
 */
final class ClipBridge extends SVGClipPathElementBridge {
  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final String XLINK = "http://www.w3.org/1999/xlink";
  private static final Set<String> SHAPES =
      Set.of("path", "rect", "circle", "ellipse", "line", "polyline", "polygon", "text");

  @Override
  public @Nullable ClipRable createClip(
      BridgeContext context, Element clip, Element clipped, GraphicsNode node) {
    AffineTransform at = transform(context, clip);
    if (clip.getAttributeNS(null, "clipPathUnits").strip().equals("objectBoundingBox")) {
      if (Boxes.isFlat(node)) {
        return CSSUtilities.convertClipPath(clip, node, context);
      }
      at.concatenate(box(node));
    }
    @Nullable Shape all = null;
    for (Node n = clip.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element child && clips(context, child)) {
        GraphicsNode built = context.getGVTBuilder().build(context, child);
        Shape region = built == null ? null : region(context, built, at);
        all = all == null ? region : region == null ? all : union(all, region);
      }
    }
    Shape region = all == null ? new Path2D.Double() : all;
    // Its own clip is in the same coordinates as it stands in, so the clipped element has its box.
    ClipRable own = CSSUtilities.convertClipPath(clip, node, context);
    if (own != null) {
      region = common(region, own.getClipPath());
    }
    return new ClipRable8Bit(node.getGraphicsNodeRable(true), region);
  }

  private static AffineTransform transform(BridgeContext context, Element clip) {
    String text = clip.getAttributeNS(null, "transform");
    return text.isBlank()
        ? new AffineTransform()
        : new AffineTransform(SVGUtilities.convertTransform(clip, "transform", text, context));
  }

  private static AffineTransform box(GraphicsNode node) {
    Rectangle2D b = node.getGeometryBounds();
    if (b == null) {
      return AffineTransform.getScaleInstance(0, 0);
    }
    return new AffineTransform(b.getWidth(), 0, 0, b.getHeight(), b.getX(), b.getY());
  }

  /** Shapes, text, and a use that points straight to one. */
  private static boolean clips(BridgeContext context, Element child) {
    if (!SVG.equals(child.getNamespaceURI())) {
      return false;
    }
    if (!child.getLocalName().equals("use")) {
      return SHAPES.contains(child.getLocalName());
    }
    String to = child.getAttributeNS(XLINK, "href");
    return SHAPES.contains(context.getReferencedElement(child, to).getLocalName());
  }

  private static @Nullable Shape region(
      BridgeContext context, GraphicsNode node, AffineTransform parent) {
    AffineTransform at = new AffineTransform(parent);
    if (node.getTransform() != null) {
      at.concatenate(node.getTransform());
    }
    @Nullable Shape found = null;
    if (node instanceof CompositeGraphicsNode group) {
      for (Object child : group.getChildren()) {
        Shape next = region(context, (GraphicsNode) child, at);
        found = found == null ? next : next == null ? found : union(found, next);
      }
    } else if (node.isVisible() && node.getOutline() != null) {
      Path2D path = new Path2D.Double(node.getOutline(), at);
      Element e = node instanceof ShapeNode ? context.getElement(node) : null;
      if (e != null) {
        path.setWindingRule(CSSUtilities.convertClipRule(e));
      }
      found = path;
    }
    if (found != null && node.getClip() != null) {
      found = common(found, at.createTransformedShape(node.getClip().getClipPath()));
    }
    return found;
  }

  private static Shape union(Shape a, Shape b) {
    TooManyCrossings.check(a, b);
    Area both = new Area(a);
    both.add(new Area(b));
    return both;
  }

  private static Shape common(Shape a, Shape b) {
    TooManyCrossings.check(a, b);
    Area both = new Area(a);
    both.intersect(new Area(b));
    return both;
  }
}
