package dev.placket.pictures.svg;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.w3c.dom.Element;

/**
 * What is set on an element; {@code inherit} stands for what is set above.
 *
 * @param own attributes, and over them the declarations of its style
 * @param styled the properties that its style declares
 * @param computed the inherited properties, its own among them
 */
record ElementProperties(
    Map<String, String> own, Set<String> styled, Map<String, String> computed) {
  /** Above the root. */
  static final ElementProperties NOTHING = new ElementProperties(Map.of(), Set.of(), Map.of());

  static ElementProperties of(Element e, ElementProperties above, Set<String> inherited) {
    Map<String, String> declared = Declared.in(e.getAttribute("style"));
    Map<String, String> own = new TreeMap<>(Audit.attributes(e));
    own.putAll(declared);
    own.replaceAll((name, value) -> value.equalsIgnoreCase("inherit") ? above.value(name) : value);
    own.values().removeIf(String::isEmpty);
    Map<String, String> computed = new HashMap<>(above.computed);
    own.forEach(
        (name, value) -> {
          if (inherited.contains(name)) {
            computed.put(name, value);
          }
        });
    return new ElementProperties(own, declared.keySet(), computed);
  }

  /** All that counts here, by name. */
  Map<String, String> all() {
    Map<String, String> all = new TreeMap<>(computed);
    all.putAll(own);
    return all;
  }

  /** All values that may lead to another element. */
  List<String> references() {
    return Stream.concat(own.values().stream(), computed.values().stream())
        .filter(v -> v.indexOf('#') >= 0 && v.indexOf('(') >= 0)
        .distinct()
        .toList();
  }

  /** The value of a property that counts here, or an empty string. */
  String value(String name) {
    return own.getOrDefault(name, computed.getOrDefault(name, ""));
  }
}
