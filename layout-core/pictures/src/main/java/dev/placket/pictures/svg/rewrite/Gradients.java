package dev.placket.pictures.svg.rewrite;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Radial gradients whose inner circle has a radius ({@code fr}, SVG 2, 14.2.3), and those whose
 * focus lies outside of the outer circle, for an engine that knows neither.
 *
 * <p>The circles between the inner and the outer one make a cone. Its tip is a focus without a
 * radius, from which the stops keep their places if they are reckoned anew.
 */
final class Gradients implements Rewriting {
  private static final String XLINK = "http://www.w3.org/1999/xlink";

  /** A focus on the rim would make a cone without an end. */
  private static final double INSIDE = 0.9999;

  @Override
  public void rewrite(Element root, List<String> notes) {
    Map<String, Element> byId = new HashMap<>();
    List<Element> radial = new ArrayList<>();
    for (Element e : Styles.all(root)) {
      byId.putIfAbsent(e.getAttributeNS(null, "id"), e);
      if ("radialGradient".equals(e.getLocalName())) {
        radial.add(e);
      }
    }
    // All are looked at before one is changed, since one takes its attributes from another.
    List<Runnable> changes = new ArrayList<>();
    for (Element e : radial) {
      Runnable change = change(e, byId, notes);
      if (change != null) {
        changes.add(change);
      }
    }
    changes.forEach(Runnable::run);
  }

  private static @Nullable Runnable change(
      Element e, Map<String, Element> byId, List<String> notes) {
    List<Element> chain = chain(e, byId);
    if (attribute(chain, "fr").isEmpty()
        && attribute(chain, "fx").isEmpty()
        && attribute(chain, "fy").isEmpty()) {
      return null;
    }
    boolean box = !attribute(chain, "gradientUnits").equals("userSpaceOnUse");
    Double cx = number(chain, "cx", 0.5, box);
    Double cy = number(chain, "cy", 0.5, box);
    Double r = number(chain, "r", 0.5, box);
    Double fx = attribute(chain, "fx").isEmpty() ? cx : number(chain, "fx", 0.5, box);
    Double fy = attribute(chain, "fy").isEmpty() ? cy : number(chain, "fy", 0.5, box);
    Double fr = number(chain, "fr", 0, box);
    if (cx == null || cy == null || r == null || fx == null || fy == null || fr == null) {
      if (!attribute(chain, "fr").isEmpty()) {
        notes.add("the inner circle of a gradient (fr) is left out; state it in units");
      }
      return null;
    }
    if (fr <= 0) {
      double away = Math.hypot(fx - cx, fy - cy);
      if (away < r * INSIDE || r <= 0) {
        return null;
      }
      if (away > r) {
        notes.add(
            "a radial gradient with its focus outside of its circle is drawn with the focus on the"
                + " circle; move the focus inside before export");
      }
      double share = r * INSIDE / away;
      return () -> focus(e, cx + (fx - cx) * share, cy + (fy - cy) * share);
    }
    String spread = attribute(chain, "spreadMethod");
    if (fr >= r || spread.equals("reflect") || spread.equals("repeat")) {
      notes.add(
          "a gradient with an inner circle (fr) is drawn without it; draw it with stops instead");
      return null;
    }
    double tip = -fr / (r - fr);
    List<Element> stops = stops(chain);
    return () -> {
      focus(e, fx + (cx - fx) * tip, fy + (cy - fy) * tip);
      e.removeAttributeNS(null, "fr");
      own(e, stops, tip);
    };
  }

  private static void focus(Element e, double x, double y) {
    e.setAttributeNS(null, "fx", Double.toString(x));
    e.setAttributeNS(null, "fy", Double.toString(y));
  }

  /** Gives a gradient its own stops, at (t - tip) / (1 - tip) instead of t. */
  private static void own(Element e, List<Element> stops, double tip) {
    List<Element> copies = new ArrayList<>();
    double last = 0;
    for (Element stop : stops) {
      Element copy = (Element) stop.cloneNode(true);
      last = Math.max(last, offset(stop));
      copy.setAttributeNS(null, "offset", Double.toString((last - tip) / (1 - tip)));
      copies.add(copy);
    }
    for (Element old : stops(List.of(e))) {
      e.removeChild(old);
    }
    copies.forEach(e::appendChild);
  }

  private static double offset(Element stop) {
    String text = stop.getAttributeNS(null, "offset").strip();
    Double value = parsed(text.isEmpty() ? "0" : text, true);
    return value == null ? 0 : Math.max(0, Math.min(1, value));
  }

  private static List<Element> stops(List<Element> chain) {
    for (Element e : chain) {
      List<Element> stops = new ArrayList<>();
      for (Node n = e.getFirstChild(); n != null; n = n.getNextSibling()) {
        if (n instanceof Element stop && "stop".equals(stop.getLocalName())) {
          stops.add(stop);
        }
      }
      if (!stops.isEmpty()) {
        return stops;
      }
    }
    return List.of();
  }

  private static List<Element> chain(Element e, Map<String, Element> byId) {
    List<Element> chain = new ArrayList<>();
    Set<Element> seen = new HashSet<>();
    Element at = e;
    while (at != null && seen.add(at)) {
      chain.add(at);
      String to = at.getAttributeNS(XLINK, "href").strip();
      at = to.startsWith("#") ? byId.get(to.substring(1)) : null;
    }
    return chain;
  }

  /** Places and radii come from radial gradients alone, the rest from linear ones too. */
  private static String attribute(List<Element> chain, String name) {
    boolean shared = name.equals("gradientUnits") || name.equals("spreadMethod");
    for (Element e : chain) {
      if ((shared || "radialGradient".equals(e.getLocalName())) && e.hasAttributeNS(null, name)) {
        return e.getAttributeNS(null, name).strip();
      }
    }
    return "";
  }

  private static @Nullable Double number(
      List<Element> chain, String name, double initial, boolean box) {
    String text = attribute(chain, name);
    if (text.isEmpty()) {
      return box || initial == 0 ? initial : null;
    }
    return parsed(text, box);
  }

  private static @Nullable Double parsed(String text, boolean percent) {
    try {
      if (text.endsWith("%")) {
        return percent ? Double.valueOf(text.substring(0, text.length() - 1)) / 100 : null;
      }
      return Double.valueOf(text.endsWith("px") ? text.substring(0, text.length() - 2) : text);
    } catch (NumberFormatException e) {
      return null;
    }
  }
}
