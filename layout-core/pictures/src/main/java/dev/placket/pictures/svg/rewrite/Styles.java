package dev.placket.pictures.svg.rewrite;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Properties of an element, from its {@code style} attribute first, then from the attribute. */
final class Styles {
  static final String SVG = "http://www.w3.org/2000/svg";

  private Styles() {}

  /** The value that an element itself gives to a property, without spaces around it, or "". */
  static String own(Element e, String property) {
    String declared = declared(e, property);
    return declared != null ? declared : e.getAttributeNS(null, property).strip();
  }

  /** The value in the {@code style} attribute, or null. */
  static @Nullable String declared(Element e, String property) {
    String style = e.getAttributeNS(null, "style");
    String found = null;
    if (!style.isEmpty()) {
      for (String declaration : declarations(style)) {
        if (named(declaration, property)) {
          found = value(declaration);
        }
      }
    }
    return found;
  }

  /** The value of an inherited property: that of the nearest element that gives one, or "". */
  static String inherited(Element e, String property) {
    for (Node n = e; n instanceof Element at; n = n.getParentNode()) {
      String own = own(at, property);
      if (!own.isEmpty() && !own.equals("inherit")) {
        return own;
      }
    }
    return "";
  }

  /** Takes a property out of both places. */
  static void remove(Element e, String property) {
    e.removeAttributeNS(null, property);
    String style = e.getAttributeNS(null, "style");
    if (style.isEmpty()) {
      return;
    }
    List<String> kept = new ArrayList<>();
    for (String declaration : declarations(style)) {
      if (!named(declaration, property)) {
        kept.add(declaration.strip());
      }
    }
    e.setAttributeNS(null, "style", String.join(";", kept));
  }

  /** Gives a property a value that nothing else of the element overrides. */
  static void set(Element e, String property, String value) {
    remove(e, property);
    String style = e.getAttributeNS(null, "style");
    if (style.isEmpty()) {
      e.setAttributeNS(null, property, value);
    } else {
      e.setAttributeNS(null, "style", style + ";" + property + ":" + value);
    }
  }

  /** All elements from the root on, in the order of the document, as they stand now. */
  static List<Element> all(Element root) {
    List<Element> all = new ArrayList<>();
    add(root, all);
    return all;
  }

  private static void add(Element e, List<Element> all) {
    all.add(e);
    for (Node n = e.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element child) {
        add(child, all);
      }
    }
  }

  private static boolean named(String declaration, String property) {
    int colon = declaration.indexOf(':');
    return colon > 0
        && declaration.substring(0, colon).strip().toLowerCase(Locale.ROOT).equals(property);
  }

  private static String value(String declaration) {
    String value = declaration.substring(declaration.indexOf(':') + 1).strip();
    int important = value.lastIndexOf('!');
    return important < 0 ? value : value.substring(0, important).strip();
  }

  /** Parted at semicolons outside of brackets and quotes. */
  private static List<String> declarations(String style) {
    List<String> parts = new ArrayList<>();
    int from = 0;
    int open = 0;
    char quote = 0;
    for (int i = 0; i < style.length(); i++) {
      char c = style.charAt(i);
      if (quote != 0) {
        quote = c == quote ? 0 : quote;
      } else if (c == '"' || c == '\'') {
        quote = c;
      } else if (c == '(' || c == ')') {
        open += c == '(' ? 1 : -1;
      } else if (c == ';' && open <= 0) {
        parts.add(style.substring(from, i));
        from = i + 1;
      }
    }
    parts.add(style.substring(from));
    parts.removeIf(String::isBlank);
    return parts;
  }
}
