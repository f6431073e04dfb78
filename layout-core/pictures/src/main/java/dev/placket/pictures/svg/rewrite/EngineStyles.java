package dev.placket.pictures.svg.rewrite;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.w3c.dom.Element;

/**
 * Takes out values that SVG 1.1 does not have, since the engine would refuse the whole drawing over
 * them: such a value counts as not stated (CSS Syntax 3, 8). What may be drawn otherwise by that is
 * noted by the audit before.
 */
final class EngineStyles implements Rewriting {
  private static final String LENGTH =
      "[+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:px|pt|pc|mm|cm|in|em|ex|%)?";
  private static final String ANGLE = "[+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:deg|grad|rad)?";

  /** The values of SVG 1.1 (appendix N) of properties that are taken as they are written. */
  private static final Map<String, Pattern> WORDED =
      Map.ofEntries(
          values(
              "alignment-baseline",
              "auto|baseline|(?:text-)?before-edge|middle|(?:text-)?after-edge|ideographic"
                  + "|alphabetic|hanging|mathematical"),
          values("baseline-shift", "baseline|sub|super|" + LENGTH),
          values("clip", "auto|rect\\([^()]*\\)"),
          values("direction", "ltr|rtl"),
          values(
              "dominant-baseline",
              "auto|use-script|no-change|reset-size|ideographic|alphabetic|hanging|mathematical"
                  + "|central|middle|text-after-edge|text-before-edge"),
          values("font-size-adjust", "none|[0-9.]+"),
          values(
              "font-stretch",
              "normal|wider|narrower|(?:ultra-|extra-|semi-)?(?:condensed|expanded)"),
          values("font-weight", "normal|bold|bolder|lighter|[1-9]00"),
          values("glyph-orientation-horizontal", ANGLE),
          values("glyph-orientation-vertical", "auto|" + ANGLE),
          values("image-rendering", "auto|optimizeSpeed|optimizeQuality"),
          values("kerning", "auto|" + LENGTH),
          values("stroke-linejoin", "miter|round|bevel"),
          values("text-decoration", "none|(?:(?:underline|overline|line-through|blink)\\s*)+"),
          values("unicode-bidi", "normal|embed|bidi-override"),
          values("writing-mode", "lr-tb|rl-tb|tb-rl|lr|rl|tb"));

  private static final List<String> PAINTS = List.of("fill", "stroke");

  @Override
  public void rewrite(Element root, List<String> notes) {
    for (Element e : Styles.all(root)) {
      WORDED.forEach(
          (property, values) -> {
            String value = Styles.own(e, property);
            if (!value.isEmpty() && !values.matcher(value).matches()) {
              Styles.remove(e, property);
            }
          });
      for (String paint : PAINTS) {
        // SVG 2, 13.2: without a context element these are none.
        if (Styles.own(e, paint).startsWith("context-")) {
          Styles.set(e, paint, "none");
        }
      }
    }
  }

  private static Map.Entry<String, Pattern> values(String property, String values) {
    return Map.entry(property, Pattern.compile("inherit|" + values, Pattern.CASE_INSENSITIVE));
  }
}
