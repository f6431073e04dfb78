package dev.placket.pictures.css;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Paints that one can see through, for an engine whose colours have no opacity: each is a gradient
 * of one stop, which SVG draws as a plain colour (SVG 2, 14.2.4). Unlike {@code fill-opacity}, it
 * is inherited together with the colour, and multiplies with whatever opacity holds elsewhere.
 */
final class SeeThroughPaints {
  private static final String SVG = "http://www.w3.org/2000/svg";

  private final Map<Colours.Seen, String> made = new LinkedHashMap<>();
  private final Element root;
  private final String prefix;

  SeeThroughPaints(Element root) {
    this.root = root;
    Set<String> ids = new HashSet<>();
    NodeList all = root.getElementsByTagNameNS("*", "*");
    for (int i = 0; i < all.getLength(); i++) {
      ids.add(((Element) all.item(i)).getAttribute("id"));
    }
    String free = "colour-";
    while (isTaken(free, ids)) {
      free = "_" + free;
    }
    prefix = free;
  }

  private static boolean isTaken(String prefix, Set<String> ids) {
    return ids.stream().anyMatch(id -> id.startsWith(prefix));
  }

  /** A paint to be written in place of a colour. */
  String of(Colours.Seen colour) {
    if (colour.alpha() == 0) {
      return "none";
    }
    return "url(#" + made.computeIfAbsent(colour, c -> prefix + (made.size() + 1)) + ")";
  }

  /** Adds the gradients to the document. */
  void add() {
    if (made.isEmpty()) {
      return;
    }
    Element defs = element("defs");
    made.forEach(
        (colour, id) -> {
          Element gradient = element("linearGradient");
          gradient.setAttributeNS(null, "id", id);
          Element stop = element("stop");
          stop.setAttributeNS(null, "offset", "0");
          stop.setAttributeNS(null, "stop-color", colour.opaque());
          stop.setAttributeNS(null, "stop-opacity", Lengths.plain(colour.alpha()));
          gradient.appendChild(stop);
          defs.appendChild(gradient);
        });
    root.appendChild(defs);
  }

  private Element element(String name) {
    return root.getOwnerDocument().createElementNS(SVG, name);
  }
}
