package dev.placket.pictures.svg;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/**
 * Holds a drawing against the list of what is drawn right. It follows what is drawn: children, and
 * what references lead to, each such target once; so its work is linear in the file.
 */
public final class Audit {
  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final Pattern LOCAL =
      Pattern.compile("url\\(\\s*[\"']?\\s*#([^\"')\\s]+)", Pattern.CASE_INSENSITIVE);

  private static final List<String> COLOURED = List.of("fill", "stroke", "stop-color", "color");

  /** Paints whose channels are equal, by the names of CSS Color 4, 6.1. */
  private static final Pattern GREY =
      Pattern.compile(
          "#([0-9a-f])\\1\\1|#([0-9a-f]{2})\\2\\2|rgb\\(\\s*([\\d.]+%?)\\s*,\\s*\\3\\s*,\\s*\\3\\s*\\)"
              + "|none|black|white|gr[ae]y|silver|whitesmoke|gainsboro|(?:dim|dark|light)gr[ae]y",
          Pattern.CASE_INSENSITIVE);

  private final DrawnList list = DrawnList.shipped();
  private final Map<String, Element> byId = new HashMap<>();
  private final Set<Visit> led = new HashSet<>();
  private final Noted noted = new Noted();

  /** How deep in markers and patterns, and in masks by luminance. */
  private int repeated;

  private int masking;

  private Audit() {}

  /** A target that was led to, and whether from within a marker or pattern, or a mask. */
  private record Visit(Element target, boolean repeated, boolean masking) {}

  /**
   * What of a drawing is not known to be drawn right, one note for each kind, in the order in which
   * they are met.
   *
   * @param root style sheets are resolved into style attributes
   */
  public static List<String> of(Element root) {
    Audit audit = new Audit();
    audit.collect(root);
    audit.visit(root, ElementProperties.NOTHING);
    return audit.noted.texts();
  }

  private void collect(Element e) {
    String id = e.getAttribute("id");
    if (!id.isEmpty()) {
      byId.putIfAbsent(id, e);
    }
    for (Node n = e.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element child) {
        collect(child);
      }
    }
  }

  private void visit(Element e, ElementProperties above) {
    String element = e.getLocalName();
    if (!SVG.equals(e.getNamespaceURI()) || list.group("quiet").contains(element)) {
      return;
    }
    if (!list.group("known").contains(element)) {
      noted.add(list.note("element").replace("{name}", Noted.shortened(element)), e);
      return;
    }
    ElementProperties given = ElementProperties.of(e, above, list.group("inherited"));
    boolean none = "none".equalsIgnoreCase(given.own().get("display"));
    if (none && list.group("undisplayed").contains(element)) {
      return;
    }
    if (seen(e, element, given)) {
      new DrawnLookup(list, noted).check(e, given);
      surroundings(e, given);
    }
    if (list.group("text").contains(element) && !hidden(given)) {
      new TextChecks(byId).of(e, given, words(e)).forEach(key -> noted.add(list.note(key), e));
    }
    given.references().forEach(value -> lead(value, given));
    if (!none) {
      boolean repeats = element.equals("marker") || element.equals("pattern");
      boolean masks = element.equals("mask") && !given.value("mask-type").equals("alpha");
      repeated += repeats ? 1 : 0;
      masking += masks ? 1 : 0;
      children(e, given);
      repeated -= repeats ? 1 : 0;
      masking -= masks ? 1 : 0;
    }
  }

  /** What is drawn right, but not in markers and patterns, or not in masks. */
  private void surroundings(Element e, ElementProperties given) {
    String blend = given.own().getOrDefault("mix-blend-mode", "normal");
    if (repeated > 0 && !blend.equals("normal")) {
      noted.add(list.note("blend").replace("{value}", Noted.shortened(blend)), e);
    }
    boolean tinted = COLOURED.stream().anyMatch(p -> !isGrey(given.own().getOrDefault(p, "")));
    if (masking > 0 && tinted) {
      noted.add(list.note("mask-tint"), e);
    }
  }

  private static boolean isGrey(String paint) {
    return paint.isEmpty() || paint.startsWith("url(") || GREY.matcher(paint).matches();
  }

  /** Text without words of its own and hidden shapes show nothing themselves. */
  private boolean seen(Element e, String element, ElementProperties given) {
    String visibility = given.computed().getOrDefault("visibility", "visible");
    if (list.group("text").contains(element)) {
      return words(e) && !hidden(given);
    }
    return !list.group("shape").contains(element) || visibility.equalsIgnoreCase("visible");
  }

  private static boolean hidden(ElementProperties given) {
    return "hidden".equalsIgnoreCase(given.value("visibility"));
  }

  private static boolean words(Element e) {
    for (Node n = e.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n.getNodeType() == Node.TEXT_NODE && !n.getNodeValue().isBlank()) {
        return true;
      }
    }
    return false;
  }

  private void children(Element e, ElementProperties given) {
    Set<String> apart = list.group("apart");
    for (Node n = e.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element child && !apart.contains(child.getLocalName())) {
        visit(child, given);
      }
    }
    Element target = target(e);
    if (target != null && led.add(new Visit(target, repeated > 0, masking > 0))) {
      visit(target, given);
    }
  }

  private @Nullable Element target(Element e) {
    String href = e.getAttributeNS(null, "href");
    String to = href.isEmpty() ? e.getAttributeNS("http://www.w3.org/1999/xlink", "href") : href;
    return to.startsWith("#") ? byId.get(to.substring(1)) : null;
  }

  private void lead(String value, ElementProperties above) {
    Matcher m = LOCAL.matcher(value);
    while (m.find()) {
      Element target = byId.get(m.group(1));
      if (target != null && led.add(new Visit(target, repeated > 0, masking > 0))) {
        visit(target, above);
      }
    }
  }

  /** The attributes of an element as names and values, foreign ones left out. */
  static Map<String, String> attributes(Element e) {
    Map<String, String> found = new HashMap<>();
    NamedNodeMap all = e.getAttributes();
    for (int i = 0; i < all.getLength(); i++) {
      Attr a = (Attr) all.item(i);
      String name = a.getLocalName() == null ? a.getName() : a.getLocalName();
      if (a.getNamespaceURI() == null || name.equals("href")) {
        found.put(name, a.getValue().strip());
      }
    }
    return found;
  }
}
