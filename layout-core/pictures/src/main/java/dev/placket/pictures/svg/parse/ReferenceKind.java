package dev.placket.pictures.svg.parse;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What an attribute or a property may refer to, and what SVG 2 draws where that is missing.
 *
 * @param word what it refers to, in the singular
 * @param targets names of the elements that it may refer to
 * @param otherwise what comes of it where there is none
 */
record ReferenceKind(String word, Set<String> targets, String otherwise) {
  private static final Set<String> SHAPES =
      Set.of("path", "rect", "circle", "ellipse", "line", "polyline", "polygon");
  private static final Set<String> GRADIENTS = Set.of("linearGradient", "radialGradient");
  private static final ReferenceKind MARKER =
      new ReferenceKind("marker", Set.of("marker"), "no marker is drawn");
  private static final ReferenceKind GRADIENT =
      new ReferenceKind("gradient", GRADIENTS, "its own values alone count");

  private static final Map<String, ReferenceKind> PROPERTIES =
      Map.of(
          "fill",
          paint("fill"),
          "stroke",
          paint("stroke"),
          "clip-path",
          new ReferenceKind("clip", Set.of("clipPath"), "nothing is clipped"),
          "mask",
          new ReferenceKind("mask", Set.of("mask"), "nothing is masked"),
          "filter",
          new ReferenceKind("filter", Set.of("filter"), "nothing is filtered"),
          "marker",
          MARKER,
          "marker-start",
          MARKER,
          "marker-mid",
          MARKER,
          "marker-end",
          MARKER);

  private static final Map<String, ReferenceKind> ELEMENTS =
      Map.of(
          "use", new ReferenceKind("part", drawn(), "nothing is drawn for it"),
          "linearGradient", GRADIENT,
          "radialGradient", GRADIENT,
          "pattern", new ReferenceKind("pattern", Set.of("pattern"), "its own values alone count"),
          "textPath", new ReferenceKind("path", SHAPES, "its text is not drawn"),
          "tref", new ReferenceKind("text", Set.of("text", "tspan"), "its text is not drawn"));

  /** What a property refers to, or null where it refers to nothing. */
  static @Nullable ReferenceKind ofProperty(String property) {
    return PROPERTIES.get(property);
  }

  /** What the {@code href} of an element refers to, or null where it refers to nothing. */
  static @Nullable ReferenceKind ofElement(String element) {
    return ELEMENTS.get(element);
  }

  private static ReferenceKind paint(String word) {
    return new ReferenceKind(
        word,
        Set.of("linearGradient", "radialGradient", "pattern"),
        "the color named beside it is drawn, or none");
  }

  private static Set<String> drawn() {
    Set<String> all = new HashSet<>(Set.of("g", "svg", "symbol", "use", "text", "a", "switch"));
    all.addAll(SHAPES);
    return Set.copyOf(all);
  }
}
