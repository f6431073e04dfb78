package dev.placket.pictures.svg.rewrite;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.w3c.dom.Element;

/**
 * Places of lettering in user units: the engine loses text that is placed in points (SVG 2, 11.4;
 * CSS Values 4, 6.2).
 */
final class TextPlaces implements Rewriting {
  private static final Set<String> TEXT = Set.of("text", "tspan", "tref");

  @Override
  public void rewrite(Element root, List<String> notes) {
    for (Element e : Styles.all(root)) {
      if (TEXT.contains(String.valueOf(e.getLocalName()))) {
        List.of("x", "y", "dx", "dy").forEach(name -> place(e, name));
      }
    }
  }

  private static void place(Element e, String name) {
    String value = e.getAttributeNS(null, name).strip();
    if (value.toLowerCase(Locale.ROOT).contains("pt")) {
      StringBuilder plain = new StringBuilder();
      for (String part : value.split("[\\s,]+")) {
        Double pixels = TransformList.pixels(part);
        plain.append(pixels == null ? part : pixels.toString()).append(' ');
      }
      e.setAttributeNS(null, name, plain.toString().strip());
    }
  }
}
