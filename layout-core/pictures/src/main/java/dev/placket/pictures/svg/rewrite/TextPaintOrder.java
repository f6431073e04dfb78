package dev.placket.pictures.svg.rewrite;

import java.util.List;
import org.w3c.dom.Element;

/** Text whose stroke lies under its fill (SVG 2, 13.8) becomes two texts, one over the other. */
final class TextPaintOrder implements Rewriting {
  @Override
  public void rewrite(Element root, List<String> notes) {
    for (Element e : Styles.all(root)) {
      if ("text".equals(e.getLocalName()) && strokeFirst(Styles.inherited(e, "paint-order"))) {
        Element over = (Element) e.cloneNode(true);
        Styles.all(over).forEach(o -> o.removeAttributeNS(null, "id"));
        paintWithout(e, "fill");
        paintWithout(over, "stroke");
        e.getParentNode().insertBefore(over, e.getNextSibling());
      }
    }
  }

  private static boolean strokeFirst(String order) {
    int stroke = order.indexOf("stroke");
    int fill = order.indexOf("fill");
    return stroke >= 0 && (fill < 0 || stroke < fill);
  }

  private static void paintWithout(Element text, String property) {
    for (Element each : Styles.all(text)) {
      Styles.set(each, property, "none");
    }
  }
}
