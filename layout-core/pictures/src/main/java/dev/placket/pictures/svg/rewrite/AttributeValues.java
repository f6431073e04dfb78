package dev.placket.pictures.svg.rewrite;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Which values attributes take that are no properties. One that takes another value counts as not
 * given (SVG 2, 4.2.1 and the clause of the attribute).
 */
final class AttributeValues {
  private static final String NUMBER = "(?:[0-9]++\\.?+[0-9]*+|\\.[0-9]++)(?:[eE][+-]?[0-9]++)?+";
  private static final String UNIT = "(?:px|pt|pc|mm|cm|in|em|ex|%)?";
  private static final String ANY = "[+-]?+" + NUMBER;
  private static final String LENGTH = ANY + UNIT;
  private static final String POSITIVE = "\\+?+" + NUMBER + UNIT;
  private static final String COMMA = "(?:\\s*+,\\s*+|\\s++)";
  private static final String FUNCTION =
      "(?:matrix|translate|scale|rotate|skewX|skewY)\\s*+\\(\\s*+"
          + ANY
          + "(?:(?:\\s*+,\\s*+|\\s*+)"
          + ANY
          + ")*+\\s*+\\)";
  private static final String TRANSFORM = "none|" + FUNCTION + "(?:[\\s,]*+" + FUNCTION + ")*+";
  private static final String UNITS = "objectBoundingBox|userSpaceOnUse";

  private static final Map<String, Pattern> ALL = new Table().all;

  private AttributeValues() {}

  /** What the attribute of an element takes, or null where nothing is known of it. */
  static @Nullable Pattern of(String element, String attribute) {
    Pattern own = ALL.get(element + " " + attribute);
    return own == null ? ALL.get(attribute) : own;
  }

  private static final class Table {
    private final Map<String, Pattern> all = new HashMap<>();

    Table() {
      for (String gradient : List.of("linearGradient", "radialGradient")) {
        add(gradient, UNITS, "gradientUnits");
        add(gradient, "pad|reflect|repeat", "spreadMethod");
        add(gradient, TRANSFORM, "gradientTransform");
      }
      add("line", LENGTH, "x1", "y1", "x2", "y2");
      add("linearGradient", LENGTH, "x1", "y1", "x2", "y2");
      add("radialGradient", LENGTH, "cx", "cy", "fx", "fy");
      add("radialGradient", POSITIVE, "r", "fr");
      add("stop", ANY + "%?", "offset");
      add("pattern", UNITS, "patternUnits", "patternContentUnits");
      add("pattern", TRANSFORM, "patternTransform");
      add("clipPath", UNITS, "clipPathUnits");
      add("mask", UNITS, "maskUnits", "maskContentUnits");
      for (String region : List.of("pattern", "mask")) {
        add(region, LENGTH, "x", "y");
        add(region, POSITIVE, "width", "height");
      }
      add("marker", "strokeWidth|userSpaceOnUse", "markerUnits");
      add("marker", POSITIVE, "markerWidth", "markerHeight");
      add("marker", LENGTH + "|left|center|right", "refX");
      add("marker", LENGTH + "|top|center|bottom", "refY");
      add("marker", "auto|auto-start-reverse|" + ANY + "(?:deg|grad|rad|turn)?", "orient");
      for (String text : List.of("text", "tspan", "tref")) {
        add(text, LENGTH + "(?:" + COMMA + LENGTH + ")*+", "x", "y", "dx", "dy");
        add(text, ANY + "(?:" + COMMA + ANY + ")*+", "rotate");
      }
      add("textPath", LENGTH, "startOffset");
      String number = COMMA + "\\+?" + NUMBER;
      all.put("viewBox", Pattern.compile(ANY + COMMA + ANY + number + number));
      all.put("transform", Pattern.compile(TRANSFORM));
      all.put(
          "preserveAspectRatio",
          Pattern.compile(
              "(?:defer\\s+)?(?:none|x(?:Min|Mid|Max)Y(?:Min|Mid|Max))(?:\\s+(?:meet|slice))?"));
    }

    private void add(String element, String values, String... attributes) {
      Pattern pattern = Pattern.compile(values);
      for (String attribute : attributes) {
        all.put(element + " " + attribute, pattern);
      }
    }
  }
}
