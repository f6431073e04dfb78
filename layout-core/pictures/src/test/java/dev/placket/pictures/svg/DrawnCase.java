package dev.placket.pictures.svg;

import java.util.List;
import java.util.Set;

/**
 * One drawing that uses a line of the list, and what it must show.
 *
 * @param place file and line of the case
 * @param name the attribute or property; empty where several interact
 * @param form how the name is set
 * @param value its value
 * @param clause where the standard says what to draw
 * @param template a fragment, with {@code {}} where the attribute goes
 * @param check what it must show
 * @param others values or whole fragments that must look different, of which one will do
 * @param second why librsvg is not asked, or empty
 */
record DrawnCase(
    String place,
    String name,
    Form form,
    String value,
    String clause,
    String template,
    Check check,
    List<String> others,
    String second) {

  /** Presentation attributes that are tried as attribute and in a style (SVG 2, 6.6). */
  private static final Set<String> BOTH =
      Set.of(
          "clip-path",
          "clip-rule",
          "color",
          "display",
          "fill",
          "fill-opacity",
          "fill-rule",
          "marker-start",
          "marker-mid",
          "marker-end",
          "mask",
          "mask-type",
          "opacity",
          "overflow",
          "paint-order",
          "stop-color",
          "stop-opacity",
          "stroke",
          "stroke-dasharray",
          "stroke-dashoffset",
          "stroke-linecap",
          "stroke-linejoin",
          "stroke-miterlimit",
          "stroke-opacity",
          "stroke-width",
          "text-anchor",
          "vector-effect",
          "visibility",
          "font-family",
          "font-size",
          "font-style",
          "font-weight");

  /** Where a property is set. */
  enum Form {
    ATTRIBUTE,
    STYLE,
    BOTH;

    static Form of(String written) {
      if (written.startsWith("style:")) {
        return STYLE;
      }
      return !written.startsWith("attr:") && DrawnCase.BOTH.contains(written) ? BOTH : ATTRIBUTE;
    }
  }

  /** What a case must show. */
  sealed interface Check {}

  /** The same as a plain drawing. */
  record Same(String fragment) implements Check {}

  /** Colours at points, over white, to some levels. */
  record Points(List<Point> points, int levels) implements Check {}

  /** An error instead of a drawing. */
  record Refused() implements Check {}

  /** A note of the list, by its key, and none without the property. */
  record Note(String key) implements Check {}

  /** A note that begins so, of a step behind the list. */
  record Said(String text) implements Check {}

  /** The same with the property and without it. */
  record Idle() implements Check {}

  /** A colour at a point, in the units of the drawing. */
  record Point(double x, double y, int rgb) {}

  /** The attribute that sets the value. */
  String set() {
    return form == Form.STYLE ? style() : attribute();
  }

  private String attribute() {
    return name + "='" + value + "'";
  }

  private String style() {
    return "style='" + name + ":" + value + "'";
  }

  /** The fragments that use the value, one for each form. */
  List<String> drawings() {
    return switch (form) {
      case ATTRIBUTE -> List.of(with(attribute()));
      case STYLE -> List.of(with(style()));
      case BOTH -> List.of(with(attribute()), with(style()));
    };
  }

  /** The fragment with the property taken out. */
  String without() {
    return with("");
  }

  /** What has to look different, as fragments. */
  List<String> contrasts() {
    return others.stream().map(o -> o.startsWith("<") ? o : at(o).drawings().get(0)).toList();
  }

  private DrawnCase at(String other) {
    return new DrawnCase(place, name, form, other, clause, template, check, List.of(), second);
  }

  private String with(String attribute) {
    return template.replace("{}", attribute);
  }

  /** For the names of tests. */
  String title() {
    return (name.isEmpty() ? value : name + "=" + value) + " (" + place + ", " + clause + ")";
  }
}
