package dev.placket.pictures.css;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Writes onto each element what the cascade says of it. */
final class Styler {
  private static final List<String> PAINTS = List.of("fill", "stroke");

  /** Colours that are not inherited, each with the opacity that goes with it. */
  private static final Map<String, String> ALONE =
      Map.of("stop-color", "stop-opacity", "flood-color", "flood-opacity", "lighting-color", "");

  private final Cascade cascade;
  private final Declarations declarations;
  private final SeeThroughPaints paints;
  private final WorkBudget steps;
  private final UsedVariables used = new UsedVariables();

  Styler(Cascade cascade, Declarations declarations, SeeThroughPaints paints, WorkBudget steps) {
    this.cascade = cascade;
    this.declarations = declarations;
    this.paints = paints;
    this.steps = steps;
  }

  /** Styles a document from its root on, and notes what a {@code use} would give other values. */
  void style(Element root, Notes notes) throws TooManySteps {
    style(root, Context.OUTERMOST);
    used.note(notes);
  }

  private void style(Element e, Context around) throws TooManySteps {
    Map<String, String> stated = cascade.of(e);
    Map<String, String> own = new LinkedHashMap<>();
    stated.forEach(
        (name, value) -> {
          if (name.startsWith("--")) {
            own.put(name, value);
          }
        });
    Map<String, String> variables = Variables.resolved(around.variables(), own, steps);
    used.element(e, variables);
    ElementStyle styles = new ElementStyle(e);
    if (stated.values().stream().anyMatch(Variables::uses)) {
      used.reads(e, around);
    }
    attributes(e, styles, variables, around);
    geometry(e);
    for (Map.Entry<String, String> d : stated.entrySet()) {
      if (!d.getKey().startsWith("--")) {
        String value = computed(d.getKey(), d.getValue(), variables);
        if (Property.isGeometry(d.getKey())) {
          place(e, d.getKey(), value);
        } else {
          styles.style(d.getKey(), value);
        }
      }
    }
    Context within = colours(styles, variables, around);
    styles.write();
    for (Node n = e.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element child) {
        style(child, within);
      }
    }
  }

  /** Presentation attributes are styles of no weight (SVG 2, clause 6.6). */
  private void attributes(
      Element e, ElementStyle styles, Map<String, String> variables, Context around)
      throws TooManySteps {
    for (String name : styles.attributes()) {
      String stated = e.getAttributeNS(null, name).strip();
      String low = stated.toLowerCase(Locale.ROOT);
      if (Declarations.EVERYWHERE.contains(low)) {
        styles.attribute(name, computed(name, low, variables));
      } else if (Variables.uses(stated)) {
        used.reads(e, around);
        styles.attribute(name, computed(name, stated, variables));
      } else {
        String value = declarations.canonical(name, Scan.withoutComments(stated));
        if (value == null) {
          declarations.left(name, stated);
        }
        styles.attribute(name, value);
      }
    }
  }

  /** Brings sizes and places in attributes to plain units; what is none drops out. */
  private void geometry(Element e) {
    for (String name : Geometry.of(e)) {
      String stated = e.getAttributeNS(null, name).strip();
      if (name.equals("d") || stated.isEmpty()) {
        continue;
      }
      String value = declarations.canonical(name, stated);
      if (value == null) {
        declarations.left(name, stated);
      }
      place(e, name, value == null ? "auto" : value);
    }
  }

  /** Sets a size or place where the element takes it; elsewhere it has no effect (SVG 2, 7.1). */
  private void place(Element e, String name, String value) {
    if (!Geometry.of(e).contains(name)) {
      return;
    }
    if (value.equals("inherit")) {
      declarations.left(name, value);
      return;
    }
    String attribute = Geometry.attribute(value);
    if (attribute == null) {
      e.removeAttributeNS(null, name);
    } else if (!attribute.equals(e.getAttributeNS(null, name))) {
      e.setAttributeNS(null, name, attribute);
    }
  }

  /** A value with its variables and keywords replaced; one without a meaning counts as unset. */
  private String computed(String name, String stated, Map<String, String> variables)
      throws TooManySteps {
    String value = stated;
    if (Variables.uses(stated)) {
      String plain = Variables.substituted(stated, variables, steps);
      String low = plain == null ? "unset" : plain.toLowerCase(Locale.ROOT);
      if (Declarations.EVERYWHERE.contains(low)) {
        value = low;
      } else {
        String canonical =
            declarations.canonical(name, low.equals("unset") ? low : String.valueOf(plain));
        value = canonical == null ? "unset" : canonical;
      }
      if (value.equals("unset")) {
        declarations.left(name, stated);
      }
    }
    Property property = Property.of(name);
    return switch (value) {
      case "initial" -> property == null ? "" : property.initial();
      case "unset", "revert", "revert-layer" ->
          property == null ? "" : property.inherited() ? "inherit" : property.initial();
      default -> value;
    };
  }

  private Context colours(ElementStyle styles, Map<String, String> variables, Context around) {
    String colour = colour(styles, around);
    Set<String> following = new HashSet<>();
    for (String paint : PAINTS) {
      if (paint(paint, styles, colour, around)) {
        following.add(paint);
      }
    }
    Map<String, String> alone = new HashMap<>();
    ALONE.forEach((name, opacity) -> alone(name, opacity, styles, colour, around, alone));
    boolean same =
        variables == around.variables()
            && colour.equals(around.colour())
            && following.equals(around.following())
            && alone.equals(around.values());
    return same ? around : new Context(variables, colour, following, alone);
  }

  private static String colour(ElementStyle styles, Context around) {
    String stated = styles.get("color");
    if (stated == null || stated.equals("inherit") || stated.equals("currentColor")) {
      return around.colour();
    }
    Colours.Seen seen = Colours.seeThrough(stated);
    if (seen != null) {
      styles.change("color", seen.opaque());
    }
    return stated;
  }

  /** Settles a paint; whether it follows {@code color}. */
  private boolean paint(String name, ElementStyle styles, String colour, Context around) {
    String stated = styles.get(name);
    if (stated == null || stated.equals("inherit")) {
      boolean follows = around.following().contains(name);
      if (follows && (stated != null || styles.get("color") != null)) {
        styles.change(name, following(colour));
      }
      return follows;
    }
    if (stated.equals("currentColor")) {
      styles.change(name, following(colour));
      return true;
    }
    int colourAt = Math.max(0, stated.indexOf("rgba("));
    Colours.Seen seen = Colours.seeThrough(stated.substring(colourAt));
    if (seen != null) {
      // A colour beside a reference stands for itself.
      String fallback = seen.alpha() == 0 ? "none" : seen.opaque();
      String before = stated.substring(0, colourAt);
      styles.change(name, colourAt == 0 ? paints.of(seen) : before + fallback);
    }
    return false;
  }

  private String following(String colour) {
    Colours.Seen seen = Colours.seeThrough(colour);
    return seen == null ? "currentColor" : paints.of(seen);
  }

  private static void alone(
      String name,
      String opacityName,
      ElementStyle styles,
      String colour,
      Context around,
      Map<String, String> kept) {
    String stated = styles.get(name);
    String opacity = opacityName.isEmpty() ? null : styles.get(opacityName);
    if (stated == null && opacity == null) {
      return;
    }
    String value = stated == null ? "black" : stated;
    if (value.equals("inherit")) {
      value = around.values().getOrDefault(name, name.equals("lighting-color") ? "white" : "black");
      styles.change(name, value);
    }
    if (opacity != null && opacity.equals("inherit")) {
      opacity = around.values().getOrDefault(opacityName, "1");
      styles.change(opacityName, opacity);
    }
    kept.put(name, value);
    if (opacity != null) {
      kept.put(opacityName, opacity);
    }
    Colours.Seen seen = Colours.seeThrough(value.equals("currentColor") ? colour : value);
    if (seen != null) {
      styles.change(name, seen.opaque());
      if (!opacityName.isEmpty()) {
        double before = opacity == null ? 1 : Double.parseDouble(opacity);
        styles.change(opacityName, Lengths.plain(before * seen.alpha()));
      }
    }
  }
}
