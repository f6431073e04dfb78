package dev.placket.pictures.svg.rewrite;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;

/**
 * Faulty and missing values as SVG 2 has them drawn: an attribute with a faulty value counts as not
 * given, data of paths and points are drawn up to the fault, and a shape without a size is not
 * drawn. An older reader would refuse the whole drawing.
 */
public final class Repairs {
  private static final int MOST = 12;
  private static final String XLINK = "http://www.w3.org/1999/xlink";

  /** What is not given counts as 0, and what has that size is not drawn (10.2, 10.3, 14.3). */
  private static final Map<String, List<String>> NEEDED =
      Map.of(
          "rect", List.of("width", "height"),
          "circle", List.of("r"),
          "pattern", List.of("width", "height"),
          "stop", List.of("offset"));

  /** Attributes whose word {@code none} is their initial value (8.5, 9.3, 14.2.2, 14.3). */
  private static final Set<String> NONE =
      Set.of("transform", "gradientTransform", "patternTransform", "d");

  private final Set<String> notes = new LinkedHashSet<>();

  private Repairs() {}

  /**
   * Repairs a document in place; its style sheets have been applied.
   *
   * @return what was left out, each once, in a designer's words
   */
  public static List<String> apply(Element root) {
    Repairs repairs = new Repairs();
    for (Element e : Styles.all(root)) {
      repairs.repair(e, e == root);
    }
    return List.copyOf(repairs.notes);
  }

  private void repair(Element e, boolean root) {
    String element = String.valueOf(e.getLocalName());
    NamedNodeMap all = e.getAttributes();
    for (int i = all.getLength() - 1; i >= 0; i--) {
      Attr a = (Attr) all.item(i);
      // Of the root, the viewBox is what is placed: a faulty one is refused.
      if (a.getNamespaceURI() == null && !(root && a.getName().equals("viewBox"))) {
        Pattern takes = AttributeValues.of(element, a.getName());
        String value = a.getValue().strip();
        if (NONE.contains(a.getName()) && value.equals("none")) {
          e.removeAttributeNS(null, a.getName());
        } else if (takes != null && !takes.matcher(value).matches()) {
          leave(e, a.getName(), value);
        }
      }
    }
    if (element.equals("path")) {
      cut(e, "d", PathText.of(e.getAttributeNS(null, "d")), "path");
    } else if (element.equals("polygon") || element.equals("polyline")) {
      cut(e, "points", PathText.points(e.getAttributeNS(null, "points")), "row of points");
    } else if (element.equals("ellipse")) {
      oneRadius(e);
    } else if (element.equals("marker")) {
      angle(e);
      reference(e, "refX", 0, List.of("left", "center", "right"));
      reference(e, "refY", 1, List.of("top", "center", "bottom"));
    }
    for (String needed : NEEDED.getOrDefault(element, List.of())) {
      boolean linked = element.equals("pattern") && !e.getAttributeNS(XLINK, "href").isEmpty();
      if (!e.hasAttributeNS(null, needed) && !linked) {
        e.setAttributeNS(null, needed, "0");
      }
    }
  }

  private void leave(Element e, String name, String value) {
    e.removeAttributeNS(null, name);
    if (!value.isEmpty()) {
      add("'" + name + "' with the value '" + shortened(value) + "' is faulty and left out");
    }
  }

  private void cut(Element e, String name, PathText read, String kind) {
    if (read.faulty()) {
      String id = e.getAttribute("id");
      add(
          "a "
              + kind
              + " is drawn up to its fault"
              + (id.isEmpty() ? "" : " (in '" + shortened(id) + "')"));
    }
    if (!read.drawn().equals(e.getAttributeNS(null, name))) {
      e.setAttributeNS(null, name, read.drawn());
    }
  }

  /** SVG 2, 10.4: a radius that is not given is as long as the other one. */
  private static void oneRadius(Element e) {
    String rx = e.getAttributeNS(null, "rx").strip();
    String ry = e.getAttributeNS(null, "ry").strip();
    double[] view = Transforms.view(e);
    if (rx.isEmpty()) {
      e.setAttributeNS(null, "rx", ry.isEmpty() ? "0" : inUnits(ry, view[1]));
    }
    if (ry.isEmpty()) {
      e.setAttributeNS(null, "ry", rx.isEmpty() ? "0" : inUnits(rx, view[0]));
    }
  }

  /** A share of the width is another one of the height. */
  private static String inUnits(String length, double whole) {
    return length.endsWith("%")
        ? Double.toString(
            Double.parseDouble(length.substring(0, length.length() - 1)) * whole / 100)
        : length;
  }

  /** Angles in degrees alone (SVG 2, 13.7.1 takes all units of CSS). */
  private static void angle(Element marker) {
    String orient = marker.getAttributeNS(null, "orient").strip();
    Map<String, Double> units =
        Map.of("deg", 1.0, "grad", 0.9, "rad", 180 / Math.PI, "turn", 360.0);
    // "grad" ends in "rad" too, so the longer one counts.
    units.entrySet().stream()
        .filter(unit -> orient.endsWith(unit.getKey()))
        .max(Comparator.comparingInt(unit -> unit.getKey().length()))
        .ifPresent(
            unit -> {
              String number = orient.substring(0, orient.length() - unit.getKey().length());
              double degrees = Double.parseDouble(number) * unit.getValue();
              marker.setAttributeNS(null, "orient", Double.toString(degrees));
            });
  }

  /** SVG 2, 13.7.1: words are 0, 50 and 100 % of the viewBox, or of the marker without one. */
  private void reference(Element marker, String name, int side, List<String> words) {
    String word = marker.getAttributeNS(null, name).strip();
    if (!words.contains(word)) {
      return;
    }
    String[] box = marker.getAttributeNS(null, "viewBox").strip().split("\\s*,\\s*|\\s+");
    String size = marker.getAttributeNS(null, side == 0 ? "markerWidth" : "markerHeight").strip();
    Double from = box.length == 4 ? TransformList.pixels(box[side]) : Double.valueOf(0);
    Double whole =
        TransformList.pixels(box.length == 4 ? box[side + 2] : size.isEmpty() ? "3" : size);
    if (from == null || whole == null || Double.isNaN(from + whole)) {
      leave(marker, name, word);
    } else {
      double at = from + whole * words.indexOf(word) / 2;
      marker.setAttributeNS(null, name, Double.toString(at));
    }
  }

  private void add(String note) {
    if (notes.size() < MOST) {
      notes.add(note + "; check the drawing");
    } else {
      notes.add("more of the drawing is faulty and left out; check the drawing");
    }
  }

  private static String shortened(String words) {
    String line = words.strip().replaceAll("[\\s\\p{Cntrl}]+", " ");
    return line.length() <= 40 ? line : line.substring(0, 37) + "...";
  }
}
