package dev.placket.pictures.svg.rewrite;

import java.util.List;
import java.util.Map;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;

/**
 * Rectangles, circles and ellipses with markers become paths: SVG 2, 13.7, has markers on every
 * shape, along its equivalent path (10.2 to 10.4); the engine has them on lines and paths alone.
 */
final class MarkedShapes implements Rewriting {
  private static final Map<String, List<String>> SIZES =
      Map.of(
          "rect", List.of("x", "y", "width", "height", "rx", "ry"),
          "circle", List.of("cx", "cy", "r"),
          "ellipse", List.of("cx", "cy", "rx", "ry"));
  private static final List<String> MARKERS = List.of("marker-start", "marker-mid", "marker-end");

  @Override
  public void rewrite(Element root, List<String> notes) {
    for (Element e : Styles.all(root)) {
      List<String> sizes = SIZES.get(String.valueOf(e.getLocalName()));
      if (sizes != null && MARKERS.stream().anyMatch(m -> isMarked(e, m))) {
        String d = EquivalentPath.of(e);
        if (d == null) {
          notes.add("markers on a shape are left out; convert the shape to a path before export");
        } else {
          replace(e, sizes, d);
        }
      }
    }
  }

  private static boolean isMarked(Element e, String marker) {
    return Styles.inherited(e, marker).startsWith("url(");
  }

  private static void replace(Element shape, List<String> sizes, String d) {
    Element path = shape.getOwnerDocument().createElementNS(Styles.SVG, "path");
    for (int i = 0; i < shape.getAttributes().getLength(); i++) {
      Attr a = (Attr) shape.getAttributes().item(i);
      if (a.getNamespaceURI() != null || !sizes.contains(a.getName())) {
        path.setAttributeNS(a.getNamespaceURI(), a.getName(), a.getValue());
      }
    }
    path.setAttributeNS(null, "d", d);
    shape.getParentNode().replaceChild(path, shape);
  }
}
