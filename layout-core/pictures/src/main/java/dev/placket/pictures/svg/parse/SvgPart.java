package dev.placket.pictures.svg.parse;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.fault.Fault;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** Reduces a document to one part of it: a view, or an element with what is around it. */
public final class SvgPart {
  private SvgPart() {}

  /**
   * Shows one part alone. What is beside it moves into {@code defs}, where it can still be referred
   * to.
   *
   * @param name what messages call the drawing
   * @param id the identifier of the part
   * @throws PictureException if there is no such element, or it draws nothing
   */
  public static void show(String name, Document document, String id) throws PictureException {
    Element root = document.getDocumentElement();
    Element part = find(root, id);
    if (part == null) {
      throw new PictureException(
          Fault.content(name, "no element of the drawing has the id '" + id + "'")
              .remedy("check the name"));
    }
    if (part.getLocalName().equals("view")) {
      copy(part, root, "viewBox");
      copy(part, root, "preserveAspectRatio");
      return;
    }
    for (Element at = part; at != root; at = (Element) at.getParentNode()) {
      alone(at);
    }
  }

  private static void copy(Element from, Element to, String attribute) {
    String value = from.getAttributeNS(null, attribute);
    if (!value.isEmpty()) {
      to.setAttributeNS(null, attribute, value);
    }
  }

  private static void alone(Element element) {
    Node parent = element.getParentNode();
    List<Element> others = new ArrayList<>();
    for (Node n = parent.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element other && other != element) {
        others.add(other);
      }
    }
    Element aside = element.getOwnerDocument().createElementNS(SvgParser.SVG, "defs");
    parent.insertBefore(aside, parent.getFirstChild());
    others.forEach(aside::appendChild);
  }

  private static @Nullable Element find(Element root, String id) {
    NodeList all = root.getElementsByTagNameNS("*", "*");
    for (int i = 0; i < all.getLength(); i++) {
      Element e = (Element) all.item(i);
      if (e.getAttributeNS(null, "id").equals(id)) {
        return e;
      }
    }
    return null;
  }
}
