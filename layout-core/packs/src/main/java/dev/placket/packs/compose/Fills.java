package dev.placket.packs.compose;

import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackColouring;
import dev.placket.packs.description.PackFlat;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * Hides parts of a drawing, fills named areas with colours, and keeps the lines on them apart from
 * them by 3:1.
 *
 * <p>An area is an element with that id: what is filled in it takes the colour, open lines stay
 * open. Lines on filled areas are black or white; see {@link LineColours}.
 */
final class Fills {
  private static final Pattern FILL = Pattern.compile("(?:^|;)\\s*fill\\s*:\\s*([^;]+)");
  private static final Pattern STROKE = Pattern.compile("(?:^|;)\\s*stroke\\s*:\\s*([^;]+)");

  private final Described described;
  private final String path;
  private final List<String> notes;

  Fills(Described described, String path, List<String> notes) {
    this.described = described;
    this.path = path;
    this.notes = notes;
  }

  /** The drawing with parts hidden and areas filled; slips in names and colours are noted. */
  byte[] apply(byte[] svg, PackFlat flat) throws IOException {
    try {
      Document document = parse(svg);
      Map<String, Element> named = named(document);
      for (int i = 0; i < flat.hidden().size(); i++) {
        String name = flat.hidden().get(i);
        List<Element> parts = ofClass(document, name);
        Element part = parts.isEmpty() ? find(named, name, "hide/" + i) : named.get(name);
        if (part != null) {
          parts.add(part);
        }
        parts.forEach(p -> set(p, "display", "none !important"));
      }
      PackColouring colouring = flat.colouring();
      LineColours colours = new LineColours(described, path, colouring, notes);
      colours.checkNames();
      outerFirst(colouring.fills(), named)
          .forEach(
              (name, colour) -> {
                Element area = find(named, name, "fills/" + name);
                if (area != null && !paint(area, colour)) {
                  add(
                      "fills/" + name,
                      "the area '" + name + "' without a fill",
                      "a closed path with a fill");
                }
              });
      colours.checkAreas();
      for (String name : colouring.lines().keySet()) {
        Element group = find(named, name, "lines/" + name);
        if (group != null) {
          String line = colours.of(name, isOutline(group, colouring));
          if (line.equals(LineColours.LIGHT)) {
            stroke(group, line, true);
          }
        }
      }
      return bytes(document);
    } catch (SAXException | ParserConfigurationException | TransformerException e) {
      throw new IOException(
          flat.file() + ": its parts cannot be hidden or filled, it is no SVG", e);
    }
  }

  /** An area within another keeps its own colour, in whatever order the two are stated. */
  private static Map<String, String> outerFirst(
      Map<String, String> fills, Map<String, Element> named) {
    List<String> names = new ArrayList<>(fills.keySet());
    names.sort(Comparator.comparingInt(name -> depth(named.get(name))));
    Map<String, String> sorted = new LinkedHashMap<>();
    names.forEach(name -> sorted.put(name, fills.get(name)));
    return sorted;
  }

  private static int depth(@Nullable Element element) {
    int depth = 0;
    for (Node n = element; n != null; n = n.getParentNode()) {
      depth++;
    }
    return depth;
  }

  /** Whether a group of lines draws the edge of an area, which borders on the paper. */
  private static boolean isOutline(Element group, PackColouring colouring) {
    boolean outline = colouring.fills().containsKey(group.getAttribute("id"));
    NodeList below = group.getElementsByTagName("*");
    for (int i = 0; i < below.getLength() && !outline; i++) {
      outline = colouring.fills().containsKey(((Element) below.item(i)).getAttribute("id"));
    }
    return outline;
  }

  /**
   * The names of the parts of a drawing.
   *
   * @throws IOException if it is no SVG
   */
  static Set<String> names(byte[] svg) throws IOException {
    try {
      return named(parse(svg)).keySet();
    } catch (SAXException | ParserConfigurationException e) {
      throw new IOException("not an SVG drawing", e);
    }
  }

  /**
   * The drawing with nothing but the parts of a name.
   *
   * @param name an id or a class
   * @return null where no part has it
   * @throws IOException if it is no SVG
   */
  static byte @Nullable [] only(byte[] svg, String name) throws IOException {
    try {
      Document document = parse(svg);
      List<Element> parts = ofClass(document, name);
      Element one = named(document).get(name);
      if (one != null) {
        parts.add(one);
      }
      if (parts.isEmpty()) {
        return null;
      }
      hideOthers(document.getDocumentElement(), parts);
      ground(document.getDocumentElement());
      return bytes(document);
    } catch (SAXException | ParserConfigurationException | TransformerException e) {
      throw new IOException("not an SVG drawing", e);
    }
  }

  /** An area of the whole drawing, so that a lone level line has a box with a height, too. */
  private static void ground(Element root) {
    String[] box = root.getAttribute("viewBox").strip().split("[\\s,]+");
    Element area = root.getOwnerDocument().createElementNS(root.getNamespaceURI(), "rect");
    area.setAttribute("x", box.length == 4 ? box[0] : "0");
    area.setAttribute("y", box.length == 4 ? box[1] : "0");
    area.setAttribute("width", "100%");
    area.setAttribute("height", "100%");
    area.setAttribute("style", "fill:#fff !important; stroke:none !important");
    root.insertBefore(area, root.getFirstChild());
  }

  /** What is drawn only where it is used stays: clips, patterns and the like. */
  private static boolean isDrawn(Element e) {
    return List.of(
            "g",
            "a",
            "switch",
            "svg",
            "use",
            "path",
            "rect",
            "circle",
            "ellipse",
            "line",
            "polyline",
            "polygon",
            "text",
            "image")
        .contains(String.valueOf(e.getLocalName()));
  }

  private static void hideOthers(Element in, List<Element> parts) {
    NodeList below = in.getChildNodes();
    for (int i = 0; i < below.getLength(); i++) {
      if (below.item(i) instanceof Element child && isDrawn(child) && !parts.contains(child)) {
        boolean holds = parts.stream().anyMatch(p -> isIn(p, child));
        if (holds) {
          hideOthers(child, parts);
        } else {
          set(child, "display", "none !important");
        }
      }
    }
  }

  private static boolean isIn(Element part, Element above) {
    for (Node n = part; n != null; n = n.getParentNode()) {
      if (n == above) {
        return true;
      }
    }
    return false;
  }

  private static boolean paint(Element area, String colour) {
    boolean painted = false;
    List<Element> all = new ArrayList<>();
    all.add(area);
    NodeList below = area.getElementsByTagName("*");
    for (int i = 0; i < below.getLength(); i++) {
      all.add((Element) below.item(i));
    }
    for (Element e : all) {
      String stated = stated(e, "fill", FILL);
      if (stated != null && !stated.equals("none")) {
        set(e, "fill", colour);
        painted = true;
      }
    }
    boolean shape = !area.getLocalName().equals("g");
    if (!painted && shape && stated(area, "fill", FILL) == null) {
      set(area, "fill", colour);
      painted = true;
    }
    return painted;
  }

  private static void stroke(Element e, String colour, boolean top) {
    String stated = stated(e, "stroke", STROKE);
    if (top ? !"none".equals(stated) : stated != null && !stated.equals("none")) {
      set(e, "stroke", colour);
    }
    NodeList below = e.getChildNodes();
    for (int i = 0; i < below.getLength(); i++) {
      if (below.item(i) instanceof Element child) {
        stroke(child, colour, false);
      }
    }
  }

  private static @Nullable String stated(Element e, String property, Pattern inStyle) {
    Matcher m = inStyle.matcher(e.getAttribute("style"));
    if (m.find()) {
      return m.group(1).strip();
    }
    return e.hasAttribute(property) ? e.getAttribute(property).strip() : null;
  }

  private static void set(Element e, String property, String value) {
    String style = e.getAttribute("style").strip();
    String ended = style.isEmpty() || style.endsWith(";") ? style : style + ";";
    e.setAttribute("style", ended + property + ":" + value);
  }

  private @Nullable Element find(Map<String, Element> named, String name, String key) {
    Element element = named.get(name);
    if (element == null) {
      described
          .faults()
          .unknown(
              described.places().of(path + "/" + key),
              "no part of the drawing named",
              name,
              named.keySet());
    }
    return element;
  }

  private void add(String key, String found, String expected) {
    described.faults().add(described.places().of(path + "/" + key), found, expected);
  }

  private static Map<String, Element> named(Document document) {
    Map<String, Element> named = new LinkedHashMap<>();
    NodeList all = document.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      Element e = (Element) all.item(i);
      if (e.hasAttribute("id")) {
        named.putIfAbsent(e.getAttribute("id"), e);
      }
    }
    return named;
  }

  private static List<Element> ofClass(Document document, String name) {
    List<Element> found = new ArrayList<>();
    NodeList all = document.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      Element e = (Element) all.item(i);
      if (List.of(e.getAttribute("class").strip().split("\\s+")).contains(name)) {
        found.add(e);
      }
    }
    return found;
  }

  /** The bytes were read by the library before, which refuses entities and outside references. */
  private static Document parse(byte[] svg)
      throws ParserConfigurationException, SAXException, IOException {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
    factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
    factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_DTD, "");
    factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
    return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg));
  }

  private static byte[] bytes(Document document) throws TransformerException {
    Transformer transformer = TransformerFactory.newDefaultInstance().newTransformer();
    transformer.setOutputProperty(OutputKeys.ENCODING, "UTF-8");
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    transformer.transform(new DOMSource(document), new StreamResult(out));
    return out.toByteArray();
  }
}
