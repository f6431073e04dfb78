package dev.placket.pictures.css;

import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/**
 * Sizes and places, which are properties in SVG 2 (clause 7.1 and Geometry Properties): the
 * attribute of that name is a style without weight, and an older reader knows nothing else.
 */
final class Geometry {
  private static final Set<String> BOX = Set.of("x", "y", "width", "height");
  private static final Map<String, Set<String>> TAKEN =
      Map.of(
          "svg", BOX,
          "symbol", BOX,
          "use", BOX,
          "rect", Set.of("x", "y", "width", "height", "rx", "ry"),
          "circle", Set.of("cx", "cy", "r"),
          "ellipse", Set.of("cx", "cy", "rx", "ry"),
          "path", Set.of("d"));

  private Geometry() {}

  /** The properties that an element takes as attributes. */
  static Set<String> of(Element e) {
    return TAKEN.getOrDefault(String.valueOf(e.getLocalName()), Set.of());
  }

  /** What stands in the attribute for a value; null where it is the initial one. */
  static @Nullable String attribute(String value) {
    String path = Scan.arguments(value, "path");
    if (path != null) {
      String data = path.strip();
      return data.length() < 2 ? "" : data.substring(1, data.length() - 1);
    }
    return value.equals("auto") || value.equals("none") ? null : value;
  }
}
