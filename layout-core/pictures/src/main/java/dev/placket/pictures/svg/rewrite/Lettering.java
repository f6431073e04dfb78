package dev.placket.pictures.svg.rewrite;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Text as it is laid out today: a line break in the file is a space (SVG 2, 11.7.4), and a span
 * that is not displayed takes no room.
 */
final class Lettering implements Rewriting {
  private static final Set<String> SPANS = Set.of("tspan", "textPath", "tref", "a");
  private static final String XML = "http://www.w3.org/XML/1998/namespace";

  @Override
  public void rewrite(Element root, List<String> notes) {
    for (Element e : Styles.all(root)) {
      if (!inText(e)) {
        continue;
      }
      if (SPANS.contains(e.getLocalName()) && Styles.own(e, "display").equals("none")) {
        e.getParentNode().removeChild(e);
      } else if (!preserves(e)) {
        breaksToSpaces(e);
      }
    }
  }

  private static boolean inText(Element e) {
    for (Node n = e; n instanceof Element at; n = n.getParentNode()) {
      if ("text".equals(at.getLocalName())) {
        return true;
      }
    }
    return false;
  }

  private static boolean preserves(Element e) {
    for (Node n = e; n instanceof Element at; n = n.getParentNode()) {
      String space = at.getAttributeNS(XML, "space").toLowerCase(Locale.ROOT);
      if (!space.isEmpty()) {
        return space.equals("preserve");
      }
    }
    return false;
  }

  private static void breaksToSpaces(Element e) {
    for (Node n = e.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n.getNodeType() == Node.TEXT_NODE) {
        n.setNodeValue(n.getNodeValue().replaceAll("[\\r\\n\\t]+", " "));
      }
    }
  }
}
