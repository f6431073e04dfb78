package dev.placket.pictures.svg.rewrite;

import java.util.List;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Gives what an {@code svg} element does to all it shows to a group: Batik clips, masks, fades and
 * transforms groups, but an {@code svg} only in part. The group stands inside the root and around
 * any other.
 */
final class WrappedViewports implements Rewriting {
  private static final List<String> MOVED =
      List.of(
          "transform",
          "transform-origin",
          "transform-box",
          "clip-path",
          "mask",
          "opacity",
          "display",
          "mix-blend-mode",
          "isolation");

  @Override
  public void rewrite(Element root, List<String> notes) {
    for (Element e : Styles.all(root)) {
      if (Styles.SVG.equals(e.getNamespaceURI())
          && e.getLocalName().equals("svg")
          && MOVED.stream().anyMatch(p -> !Styles.own(e, p).isEmpty())) {
        wrap(e, e == root);
      }
    }
  }

  private static void wrap(Element svg, boolean root) {
    Element group = svg.getOwnerDocument().createElementNS(Styles.SVG, "g");
    for (String property : MOVED) {
      String value = Styles.own(svg, property);
      if (!value.isEmpty()) {
        if (Styles.declared(svg, property) != null) {
          String before = group.getAttributeNS(null, "style");
          group.setAttributeNS(null, "style", before + property + ":" + value + ";");
        } else {
          group.setAttributeNS(null, property, value);
        }
        Styles.remove(svg, property);
      }
    }
    if (root) {
      for (Node n = svg.getFirstChild(); n != null; n = svg.getFirstChild()) {
        group.appendChild(n);
      }
      svg.appendChild(group);
    } else {
      svg.getParentNode().insertBefore(group, svg);
      group.appendChild(svg);
    }
  }
}
