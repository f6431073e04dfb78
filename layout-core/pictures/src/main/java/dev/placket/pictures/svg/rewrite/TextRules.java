package dev.placket.pictures.svg.rewrite;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Text as it is laid out today: a line break in the file is a space (SVG 2, 11.7.4), and a span
 * that is not displayed takes no room.
 */
final class TextRules implements Rewriting {
  private static final Set<String> SPANS = Set.of("tspan", "textPath", "tref", "a");
  private static final String XML = "http://www.w3.org/XML/1998/namespace";

  private static final List<String> LISTS = List.of("x", "y", "dx", "dy", "rotate");

  @Override
  public void rewrite(Element root, List<String> notes) {
    for (Element e : Styles.all(root)) {
      if (!inText(e)) {
        continue;
      }
      if ("text".equals(e.getLocalName())) {
        accents(e, notes);
      }
      if (SPANS.contains(e.getLocalName()) && Styles.own(e, "display").equals("none")) {
        e.getParentNode().removeChild(e);
      } else if (!preserves(e)) {
        breaksToSpaces(e);
      }
    }
  }

  /** An accent and its letter become one sign, unless places are given sign by sign. */
  private static void accents(Element text, List<String> notes) {
    boolean listed =
        Styles.all(text).stream()
            .anyMatch(
                e ->
                    LISTS.stream()
                        .anyMatch(
                            l -> e.getAttributeNS(null, l).strip().matches("\\S+[\\s,]+\\S.*")));
    for (Element e : Styles.all(text)) {
      for (Node n = e.getFirstChild(); n != null; n = n.getNextSibling()) {
        if (n.getNodeType() == Node.TEXT_NODE && !listed) {
          n.setNodeValue(Normalizer.normalize(n.getNodeValue(), Normalizer.Form.NFC));
        }
      }
    }
    text.getTextContent()
        .codePoints()
        .filter(TextRules::isAccent)
        .findFirst()
        .ifPresent(
            c ->
                notes.add(
                    String.format(
                        Locale.ROOT,
                        "the accent U+%04X of lettering may stand beside its letter; convert text"
                            + " to outlines before export",
                        c)));
  }

  private static boolean isAccent(int c) {
    int type = Character.getType(c);
    return type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK;
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
