package dev.placket.pictures.svg.rewrite;

import org.w3c.dom.Element;

/**
 * Properties that say how an element meets what lies under it; the engine knows none of them. They
 * are no presentation attributes (SVG 2, 6.6), so only the style counts.
 */
public final class Compositing {
  private Compositing() {}

  /** The word of {@code mix-blend-mode} (Compositing and Blending 1, 3.4.1), or "normal". */
  public static String blend(Element e) {
    String word = Styles.declared(e, "mix-blend-mode");
    return word == null || word.isEmpty() ? "normal" : word;
  }

  /** Whether nothing inside blends with what lies under the element (3.4.2). */
  public static boolean isolates(Element e) {
    return "isolate".equals(Styles.declared(e, "isolation"));
  }
}
