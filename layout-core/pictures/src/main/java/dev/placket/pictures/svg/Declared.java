package dev.placket.pictures.svg;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** The declarations of a {@code style} attribute. */
final class Declared {
  private Declared() {}

  /** Values by property, the last of each; {@code !important} taken off. */
  static Map<String, String> in(String style) {
    Map<String, String> found = new LinkedHashMap<>();
    int start = 0;
    int open = 0;
    char quote = 0;
    for (int i = 0; i <= style.length(); i++) {
      char c = i == style.length() ? ';' : style.charAt(i);
      if (quote != 0) {
        quote = c == quote ? 0 : quote;
      } else if (c == '"' || c == '\'') {
        quote = c;
      } else if (c == '(') {
        open++;
      } else if (c == ')') {
        open--;
      }
      if (i == style.length() || (c == ';' && open <= 0 && quote == 0)) {
        add(style.substring(start, i), found);
        start = i + 1;
      }
    }
    return found;
  }

  private static void add(String declaration, Map<String, String> found) {
    int colon = declaration.indexOf(':');
    if (colon > 0) {
      String name = declaration.substring(0, colon).strip().toLowerCase(Locale.ROOT);
      String value = declaration.substring(colon + 1).strip();
      int mark = value.lastIndexOf('!');
      found.put(name, mark >= 0 ? value.substring(0, mark).strip() : value);
    }
  }
}
