package dev.placket.pictures.svg;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * What goes wrong with text by how its parts stand together, which no single attribute tells: each
 * is the key of a note.
 */
final class TextChecks {
  private static final Pattern LOCAL =
      Pattern.compile("url\\(\\s*[\"']?\\s*#([^\"')\\s]+)", Pattern.CASE_INSENSITIVE);
  private static final String XLINK = "http://www.w3.org/1999/xlink";
  private static final Map<String, List<String>> BOX_UNITS =
      Map.of(
          "fill", List.of("gradientUnits", "patternUnits", "patternContentUnits"),
          "stroke", List.of("gradientUnits", "patternUnits", "patternContentUnits"),
          "clip-path", List.of("clipPathUnits"),
          "mask", List.of("maskContentUnits"));

  /** Units that count the painted box where nothing is said. */
  private static final Set<String> BOX_UNLESS_SAID = Set.of("gradientUnits", "patternUnits");

  private final Map<String, Element> byId;

  TextChecks(Map<String, Element> byId) {
    this.byId = byId;
  }

  /**
   * The keys of all notes that an element of text gets.
   *
   * @param words whether it has words of its own
   */
  List<String> of(Element e, ElementProperties given, boolean words) {
    List<String> keys = new ArrayList<>();
    if (words && BOX_UNITS.keySet().stream().anyMatch(p -> measuresBox(p, given.value(p)))) {
      keys.add("text-box");
    }
    String name = e.getLocalName();
    if (name.equals("textPath") && follows(e)) {
      keys.add("text-path");
    }
    if (name.equals("text") && turned(e)) {
      keys.add("text-turned");
    }
    return keys;
  }

  /** SVG 2, 8.10: the box of text is that of its em boxes; the engine takes that of the ink. */
  private boolean measuresBox(String property, String value) {
    Matcher m = LOCAL.matcher(value);
    Element server = m.find() ? byId.get(m.group(1)) : null;
    if (server == null || hasOneStop(server)) {
      return false;
    }
    return BOX_UNITS.getOrDefault(property, List.of()).stream()
        .filter(units -> isOf(units, server))
        .anyMatch(
            units -> {
              String said = chained(server, units);
              return said.isEmpty()
                  ? BOX_UNLESS_SAID.contains(units)
                  : said.equals("objectBoundingBox");
            });
  }

  private static boolean isOf(String units, Element server) {
    String name = server.getLocalName();
    return units.startsWith("gradient") ? name.endsWith("Gradient") : units.startsWith(name);
  }

  private static boolean hasOneStop(Element server) {
    return server.getLocalName().endsWith("Gradient")
        && server.getElementsByTagNameNS("*", "stop").getLength() == 1;
  }

  private String chained(Element server, String attribute) {
    Set<Element> seen = new HashSet<>();
    Element at = server;
    while (at != null && seen.add(at)) {
      if (at.hasAttributeNS(null, attribute)) {
        return at.getAttributeNS(null, attribute).strip();
      }
      at = linked(at);
    }
    return "";
  }

  private @Nullable Element linked(Element e) {
    String plain = e.getAttributeNS(null, "href").strip();
    String to = plain.isEmpty() ? e.getAttributeNS(XLINK, "href").strip() : plain;
    return to.startsWith("#") ? byId.get(to.substring(1)) : null;
  }

  /** Whether words stand before a textPath, which then begins elsewhere. */
  private static boolean follows(Element path) {
    for (Node n = path.getPreviousSibling(); n != null; n = n.getPreviousSibling()) {
      if (!n.getTextContent().isBlank() && n.getNodeType() != Node.COMMENT_NODE) {
        return true;
      }
    }
    return false;
  }

  /** Whether letters are turned one by one, and parts stand in the way of that. */
  private static boolean turned(Element text) {
    int turning = 0;
    int lists = 0;
    List<Element> all = new ArrayList<>(List.of(text));
    for (int i = 0; i < all.size(); i++) {
      String rotate = all.get(i).getAttributeNS(null, "rotate").strip();
      turning += rotate.isEmpty() ? 0 : 1;
      lists += rotate.matches(".*\\S[\\s,]+\\S.*") ? 1 : 0;
      for (Node n = all.get(i).getFirstChild(); n != null; n = n.getNextSibling()) {
        if (n instanceof Element child
            && !child.getTextContent().isBlank()
            && !"none"
                .equals(
                    ElementProperties.of(child, ElementProperties.NOTHING, Set.of())
                        .value("display"))) {
          all.add(child);
        }
      }
    }
    boolean onPath = all.stream().anyMatch(e -> "textPath".equals(e.getLocalName()));
    return turning > 1 || (turning > 0 && onPath) || (lists > 0 && all.size() > 1);
  }
}
