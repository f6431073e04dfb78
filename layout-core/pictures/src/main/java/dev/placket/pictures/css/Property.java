package dev.placket.pictures.css;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A property that drawings are styled by (SVG 2, clause 6.1, and SVG 1.1, appendix N).
 *
 * @param kind what its values are
 * @param inherited whether an element takes it from the element around it
 * @param initial its value where nobody states one
 * @param words the words that it takes, where those are known
 */
record Property(Kind kind, boolean inherited, String initial, Set<String> words) {
  /** Kinds of values. */
  enum Kind {
    PAINT,
    COLOUR,
    OPACITY,
    WORD,
    REFERENCE,
    LENGTH,
    POSITIVE_LENGTH,
    DASHES,
    NUMBER,
    PATH,
    TEXT
  }

  private static final Map<String, Property> ALL = new Table().all;

  /** A property by its name in small letters, or null. */
  static @Nullable Property of(String name) {
    return ALL.get(name);
  }

  /** Properties that no attribute of that name states, or that mean something else there. */
  private static final Set<String> STYLE_ALONE = Set.of("font", "marker", "transform");

  /** Sizes and places, attributes of some elements alone and lists or numbers on others. */
  private static final Set<String> GEOMETRY =
      Set.of("x", "y", "width", "height", "cx", "cy", "r", "rx", "ry", "d");

  /** Whether an attribute of this name is a style of no weight (SVG 2, clause 6.6). */
  static boolean isAttribute(String name) {
    return ALL.containsKey(name) && !STYLE_ALONE.contains(name) && !isGeometry(name);
  }

  /** Whether a property is a size or a place, which only some elements take. */
  static boolean isGeometry(String name) {
    return GEOMETRY.contains(name);
  }

  private static final class Table {
    private final Map<String, Property> all = new HashMap<>();

    Table() {
      add(Kind.PAINT, true, "black", "", "fill");
      add(Kind.PAINT, true, "none", "", "stroke");
      add(Kind.COLOUR, true, "black", "", "color");
      add(Kind.COLOUR, false, "black", "", "stop-color", "flood-color");
      add(Kind.COLOUR, false, "white", "", "lighting-color");
      add(Kind.OPACITY, true, "1", "", "fill-opacity", "stroke-opacity");
      add(Kind.OPACITY, false, "1", "", "opacity", "stop-opacity", "flood-opacity");
      add(Kind.REFERENCE, false, "none", "none", "clip-path", "mask", "filter");
      add(Kind.REFERENCE, true, "none", "none", "marker-start", "marker-mid", "marker-end");
      add(Kind.POSITIVE_LENGTH, true, "1", "", "stroke-width");
      add(Kind.LENGTH, true, "0", "", "stroke-dashoffset");
      add(Kind.DASHES, true, "none", "none", "stroke-dasharray");
      add(Kind.NUMBER, true, "4", "", "stroke-miterlimit");
      add(Kind.LENGTH, false, "0", "", "x", "y", "cx", "cy");
      add(Kind.POSITIVE_LENGTH, false, "0", "", "r");
      add(Kind.POSITIVE_LENGTH, false, "auto", "auto", "width", "height", "rx", "ry");
      add(Kind.PATH, false, "none", "none", "d");
      addWords();
      addText();
    }

    private void addWords() {
      word(true, "butt round square", "stroke-linecap");
      word(true, "miter round bevel miter-clip arcs", "stroke-linejoin");
      word(true, "nonzero evenodd", "fill-rule", "clip-rule");
      word(true, "visible hidden collapse", "visibility");
      word(true, "start middle end", "text-anchor");
      word(true, "auto optimizeSpeed crispEdges geometricPrecision", "shape-rendering");
      word(true, "auto optimizeSpeed optimizeLegibility geometricPrecision", "text-rendering");
      word(true, "auto optimizeSpeed optimizeQuality", "color-rendering");
      word(true, "sRGB auto linearRGB", "color-interpolation");
      word(true, "linearRGB auto sRGB", "color-interpolation-filters");
      word(true, "normal italic oblique", "font-style");
      word(true, "normal small-caps", "font-variant");
      word(false, "visible hidden scroll auto", "overflow");
      word(
          false,
          "inline block list-item run-in compact marker table inline-table table-row-group"
              + " table-header-group table-footer-group table-row table-column-group table-column"
              + " table-cell table-caption none",
          "display");
      word(
          true,
          "visiblePainted visibleFill visibleStroke visible painted fill stroke all none",
          "pointer-events");
    }

    private void addText() {
      add(
          Kind.POSITIVE_LENGTH,
          true,
          "medium",
          "xx-small x-small small medium large x-large" + " xx-large larger smaller",
          "font-size");
      add(Kind.LENGTH, true, "normal", "normal", "letter-spacing", "word-spacing");
      add(Kind.TEXT, true, "serif", "", "font-family");
      add(Kind.TEXT, true, "normal", "", "font-weight", "font-stretch", "font");
      add(Kind.TEXT, true, "auto", "", "image-rendering", "cursor", "kerning");
      add(Kind.TEXT, true, "none", "", "font-size-adjust", "marker");
      add(Kind.TEXT, true, "lr-tb", "", "writing-mode");
      add(Kind.TEXT, true, "ltr", "", "direction");
      add(Kind.TEXT, true, "auto", "", "glyph-orientation-vertical");
      add(Kind.TEXT, true, "0deg", "", "glyph-orientation-horizontal");
      add(Kind.TEXT, false, "none", "", "text-decoration");
      add(Kind.TEXT, false, "auto", "", "alignment-baseline", "dominant-baseline", "clip");
      add(Kind.TEXT, false, "baseline", "", "baseline-shift");
      add(Kind.TEXT, false, "normal", "", "unicode-bidi");
      add(Kind.TEXT, false, "accumulate", "", "enable-background");
      // What the older engine does not know, and the steps after this one do.
      add(Kind.TEXT, false, "normal", "", "mix-blend-mode");
      add(Kind.TEXT, false, "auto", "", "isolation");
      add(Kind.TEXT, true, "normal", "", "paint-order");
      add(Kind.TEXT, false, "none", "", "transform", "vector-effect");
      add(Kind.TEXT, false, "0 0", "", "transform-origin");
      add(Kind.TEXT, false, "view-box", "", "transform-box");
      add(Kind.TEXT, true, "normal", "", "white-space", "text-transform");
    }

    private void word(boolean inherited, String words, String... names) {
      add(Kind.WORD, inherited, words.split(" ", 2)[0], words, names);
    }

    private void add(Kind kind, boolean inherited, String initial, String words, String... names) {
      Set<String> all = words.isEmpty() ? Set.of() : Set.copyOf(List.of(words.split(" ")));
      for (String name : names) {
        this.all.put(name, new Property(kind, inherited, initial, all));
      }
    }
  }
}
