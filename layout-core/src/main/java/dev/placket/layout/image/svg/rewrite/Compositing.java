package dev.placket.layout.image.svg.rewrite;

import org.w3c.dom.Element;

/** Properties that say how an element meets what lies under it; the engine knows none of them. */
public final class Compositing {
  private Compositing() {}

  /** The word of {@code mix-blend-mode} (Compositing and Blending 1, 3.4.1), or "normal". */
  public static String blend(Element e) {
    String word = Styles.own(e, "mix-blend-mode");
    return word.isEmpty() ? "normal" : word;
  }

  /** Whether nothing inside blends with what lies under the element (3.4.2). */
  public static boolean isolates(Element e) {
    return Styles.own(e, "isolation").equals("isolate");
  }
}
