package dev.placket.pictures.svg.parse;

import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Lets Batik follow the plain {@code href} of SVG 2, of which it knows only the older XLink form.
 */
public final class PlainReferences {
  private static final String XLINK = "http://www.w3.org/1999/xlink";

  private PlainReferences() {}

  /** Writes every plain reference in the older form too; of both the plain one counts. */
  public static void adopt(Element e) {
    String plain = e.getAttributeNS(null, "href");
    if (plain.startsWith("#")) {
      e.setAttributeNS(XLINK, "xlink:href", plain);
    }
    for (Node n = e.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element child) {
        adopt(child);
      }
    }
  }
}
