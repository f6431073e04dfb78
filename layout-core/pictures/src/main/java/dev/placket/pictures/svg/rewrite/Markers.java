package dev.placket.pictures.svg.rewrite;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;

/**
 * Markers of SVG 2: a line's first one turned round ({@code auto-start-reverse}), and no attribute
 * {@code marker}, which is a property only.
 */
final class Markers implements Rewriting {
  private static final Pattern LOCAL =
      Pattern.compile("url\\(\\s*['\"]?#([^'\")\\s]+)['\"]?\\s*\\)");
  private static final String REVERSE = "auto-start-reverse";
  private static final String SUFFIX = "-reversed";

  @Override
  public void rewrite(Element root, List<String> notes) {
    Map<String, Element> reversing = new HashMap<>();
    List<Element> all = Styles.all(root);
    for (Element e : all) {
      e.removeAttributeNS(null, "marker");
      if ("marker".equals(e.getLocalName())
          && e.getAttributeNS(null, "orient").strip().equals(REVERSE)) {
        e.setAttributeNS(null, "orient", "auto");
        reversing.putIfAbsent(e.getAttributeNS(null, "id"), e);
      }
    }
    if (reversing.isEmpty()) {
      return;
    }
    for (Element marker : reversing.values()) {
      Element copy = (Element) marker.cloneNode(true);
      Styles.all(copy).forEach(c -> c.removeAttributeNS(null, "id"));
      copy.setAttributeNS(null, "id", marker.getAttributeNS(null, "id") + SUFFIX);
      copy.setAttributeNS(null, "reversed", "true");
      marker.getParentNode().insertBefore(copy, marker.getNextSibling());
    }
    for (Element e : all) {
      redirect(e, reversing);
    }
  }

  private static void redirect(Element e, Map<String, Element> reversing) {
    String shorthand = Styles.declared(e, "marker");
    String start = Styles.own(e, "marker-start");
    String given = start.isEmpty() && shorthand != null ? shorthand : start;
    Matcher to = LOCAL.matcher(given);
    if (to.find() && reversing.containsKey(to.group(1))) {
      Styles.set(e, "marker-start", "url(#" + to.group(1) + SUFFIX + ")");
    }
  }
}
