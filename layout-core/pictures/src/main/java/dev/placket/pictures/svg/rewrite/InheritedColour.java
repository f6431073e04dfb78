package dev.placket.pictures.svg.rewrite;

import java.util.List;
import org.w3c.dom.Element;

/**
 * Repeats an inherited {@code currentColor} where {@code color} changes: it is inherited as that
 * word (CSS Color 4, 9.2), while Batik inherits the colour that it had further up.
 */
final class InheritedColour implements Rewriting {
  @Override
  public void rewrite(Element root, List<String> notes) {
    for (Element e : Styles.all(root)) {
      if (!Styles.own(e, "color").isEmpty()) {
        for (String property : List.of("fill", "stroke")) {
          if (Styles.own(e, property).isEmpty()
              && Styles.inherited(e, property).equalsIgnoreCase("currentColor")) {
            Styles.set(e, property, "currentColor");
          }
        }
      }
    }
  }
}
