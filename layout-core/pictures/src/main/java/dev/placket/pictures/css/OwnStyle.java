package dev.placket.pictures.css;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/**
 * What an element itself states of a property, in its {@code style} attribute or else in the
 * attribute of that name, once {@link StyleSheets} have been applied.
 */
public final class OwnStyle {
  private OwnStyle() {}

  /** The value that an element states, or null if it states none. */
  public static @Nullable String get(Element e, String property) {
    String styled = e.hasAttributeNS(null, "style") ? declarations(e).get(property) : null;
    if (styled != null) {
      return styled;
    }
    return e.hasAttributeNS(null, property) ? e.getAttributeNS(null, property).strip() : null;
  }

  /** States a value in the {@code style} attribute, above any attribute of that name. */
  public static void set(Element e, String property, String value) {
    Map<String, String> declarations = declarations(e);
    declarations.remove(property);
    declarations.put(property, value);
    write(e, declarations);
  }

  /** Takes a property out of both places. */
  public static void remove(Element e, String property) {
    Map<String, String> declarations = declarations(e);
    if (declarations.remove(property) != null) {
      write(e, declarations);
    }
    e.removeAttributeNS(null, property);
  }

  /** All that the {@code style} attribute states, by property; what outweighs others is last. */
  public static Map<String, String> declarations(Element e) {
    Map<String, String> declarations = new LinkedHashMap<>();
    for (String part : Scan.split(e.getAttributeNS(null, "style"), ";")) {
      int colon = part.indexOf(':');
      if (colon > 0) {
        String name = part.substring(0, colon).strip();
        declarations.remove(name);
        declarations.put(name, part.substring(colon + 1).strip());
      }
    }
    return declarations;
  }

  static void write(Element e, Map<String, String> declarations) {
    if (declarations.isEmpty()) {
      e.removeAttributeNS(null, "style");
      return;
    }
    String text =
        declarations.entrySet().stream()
            .map(d -> d.getKey() + ":" + d.getValue())
            .collect(Collectors.joining(";"));
    e.setAttributeNS(null, "style", text);
  }
}
