package dev.placket.pictures.css;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/**
 * Whether custom properties may differ between where an element stands and where it is used. SVG 2,
 * clause 5.6, lets a used element inherit from its {@code use}; here each element gets one value,
 * that of its own place.
 */
final class UsedVariables {
  private @Nullable Map<String, String> outermost;
  private boolean anyUse;
  private boolean otherAtUse;
  private boolean read;
  private boolean otherWhereRead;

  /** Takes an element with its custom properties, the root first. */
  void element(Element e, Map<String, String> variables) {
    if (outermost == null) {
      outermost = new HashMap<>(variables);
    } else if ("use".equals(e.getLocalName())) {
      anyUse = true;
      otherAtUse |= !variables.equals(outermost);
    }
  }

  /** Takes an element that reads a custom property, and its surroundings; no use is of the root. */
  void reads(Element e, Context around) {
    if (e.getParentNode() instanceof Element) {
      read = true;
      otherWhereRead |= !around.variables().equals(outermost);
    }
  }

  /** Adds a note if a used element may have the wrong value. */
  void note(Notes notes) {
    if (anyUse && read && (otherAtUse || otherWhereRead)) {
      notes.add(
          "a custom property that differs between an element and its use is taken from where the"
              + " element stands; write its value out before export");
    }
  }
}
