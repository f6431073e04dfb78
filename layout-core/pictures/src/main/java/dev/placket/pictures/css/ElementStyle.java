package dev.placket.pictures.css;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;

/** The styles of one element while they are settled: its attributes, and its style above them. */
final class ElementStyle {
  private final Element element;
  private final Map<String, String> attributes = new LinkedHashMap<>();
  private final Map<String, String> style = new LinkedHashMap<>();

  ElementStyle(Element element) {
    this.element = element;
  }

  /** The names of its presentation attributes. */
  List<String> attributes() {
    List<String> names = new ArrayList<>();
    NamedNodeMap all = element.getAttributes();
    for (int i = 0; i < all.getLength(); i++) {
      String name = all.item(i).getNodeName();
      if (Property.isAttribute(name)) {
        names.add(name);
      }
    }
    return names;
  }

  /** Sets what an attribute says, or that it says nothing. */
  void attribute(String name, @Nullable String value) {
    if (value == null || value.isEmpty()) {
      element.removeAttributeNS(null, name);
    } else {
      attributes.put(name, value);
    }
  }

  /** Sets what the style says; an empty value is that of a property unknown to all. */
  void style(String name, String value) {
    if (!value.isEmpty()) {
      style.put(name, value);
    }
  }

  /** What holds of a property, or null if nothing is stated. */
  @Nullable String get(String name) {
    String stated = style.get(name);
    return stated == null ? attributes.get(name) : stated;
  }

  /** Changes a property where it is stated, or states it. */
  void change(String name, String value) {
    if (!style.containsKey(name) && attributes.containsKey(name)) {
      attributes.put(name, value);
    } else {
      style.put(name, value);
    }
  }

  /** Writes all of it onto the element. */
  void write() {
    attributes.forEach(
        (name, value) -> {
          if (!element.getAttributeNS(null, name).equals(value)) {
            element.setAttributeNS(null, name, value);
          }
        });
    OwnStyle.write(element, style);
  }
}
