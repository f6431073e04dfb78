package dev.placket.pictures.svg.parse;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.ReadLimit;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/**
 * How much a drawing weighs once every reference stands for what it points to, counted without
 * expanding any: each element is weighed once, so the work is linear in the file.
 */
public final class SvgWeight {
  private static final Pattern LOCAL_URL =
      Pattern.compile("url\\s*\\(\\s*['\"]?\\s*#([^\\s'\")]+)");
  private final String name;
  private final ReadLimits limits;
  private final Map<String, Element> byId = new HashMap<>();
  private final Map<Element, Weight> done = new HashMap<>();
  private final Set<Element> within = new HashSet<>();

  private record Weight(long elements, long characters, int depth, long memory) {}

  private SvgWeight(String name, ReadLimits limits) {
    this.name = name;
    this.limits = limits;
  }

  /** Refuses a drawing that weighs more than the limits. */
  public static void check(String name, Element root, ReadLimits limits) throws PictureException {
    SvgWeight w = new SvgWeight(name, limits);
    w.collect(root);
    w.weigh(root, 0);
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

  private Weight weigh(Element e, int above) throws PictureException {
    Weight known = done.get(e);
    if (known != null) {
      checkDepth(above + known.depth);
      return known;
    }
    checkDepth(above + 1);
    if (!within.add(e)) {
      throw new PictureException(
          Fault.content(name, "the element uses itself")
              .in("the element '" + e.getAttribute("id") + "'")
              .remedy("break the circle and save again"));
    }
    long elements = 1;
    long characters = 0;
    int depth = 0;
    long memory = DrawingMemory.ELEMENT;
    NamedNodeMap attributes = e.getAttributes();
    for (int i = 0; i < attributes.getLength(); i++) {
      Attr a = (Attr) attributes.item(i);
      characters += a.getValue().length();
      memory += DrawingMemory.attribute(e.getLocalName(), a.getName(), a.getValue()).kept();
    }
    Set<Element> parts = new LinkedHashSet<>(references(e));
    long references = parts.size();
    for (Node n = e.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element child) {
        parts.add(child);
      } else if (n.getNodeValue() != null) {
        characters += n.getNodeValue().length();
        memory += DrawingMemory.text(e.getLocalName(), n.getNodeValue());
      }
    }
    for (Element part : parts) {
      Weight w = weigh(part, above + 1);
      elements += w.elements;
      characters += w.characters;
      depth = Math.max(depth, w.depth);
      memory += isHeld(part, e) ? w.memory : 0;
      checkTotals(elements + references, characters);
      checkMemory(memory);
    }
    within.remove(e);
    Weight all = new Weight(elements, characters, depth + 1, memory);
    done.put(e, all);
    return all;
  }

  /** A use is a copy of its own; a paint, a clip or a marker is no second document. */
  private static boolean isHeld(Element part, Element e) {
    return part.getParentNode() == e || "use".equals(e.getLocalName());
  }

  private Set<Element> references(Element e) {
    Set<String> ids = new LinkedHashSet<>();
    NamedNodeMap attributes = e.getAttributes();
    for (int i = 0; i < attributes.getLength(); i++) {
      Attr a = (Attr) attributes.item(i);
      String value = a.getValue().strip();
      if ("href".equals(a.getLocalName()) && value.startsWith("#")) {
        ids.add(value.substring(1));
      } else if (value.indexOf('#') >= 0) {
        Matcher url = LOCAL_URL.matcher(value);
        while (url.find()) {
          ids.add(url.group(1));
        }
      }
    }
    Set<Element> found = new LinkedHashSet<>();
    for (String id : ids) {
      Element target = byId.get(id);
      if (target != null) {
        found.add(target);
      }
    }
    return found;
  }

  private void checkDepth(int depth) throws PictureException {
    if (depth > limits.depth()) {
      throw PictureException.over(
          ReadLimit.DEPTH,
          Fault.limit(
                  name,
                  "is nested more than "
                      + limits.depth()
                      + " deep once uses stand for what they point to")
              .remedy("ungroup the drawing"));
    }
  }

  private void checkMemory(long memory) throws PictureException {
    if (memory > limits.memory()) {
      throw PictureException.over(
          ReadLimit.MEMORY,
          Fault.limit(
                  name,
                  "needs more memory than the limit of "
                      + (limits.memory() >> 20)
                      + " MiB once uses stand for what they point to")
              .remedy("draw it with fewer uses"));
    }
  }

  private void checkTotals(long elements, long characters) throws PictureException {
    if (elements > limits.uses() || characters > limits.characters()) {
      throw PictureException.over(
          elements > limits.uses() ? ReadLimit.USES : ReadLimit.CHARACTERS,
          Fault.limit(
                  name,
                  "grows to more than "
                      + limits.uses()
                      + " elements or "
                      + limits.characters()
                      + " characters once uses stand for what they point to")
              .remedy("draw it with fewer uses"));
    }
  }
}
