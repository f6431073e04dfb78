package dev.placket.pictures.css;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds where parts of a style sheet end, by the rules of CSS Syntax 3 for strings, escapes and
 * brackets (clauses 4.3 and 5.4). What a part means is for others to say.
 */
final class Scan {
  private Scan() {}

  /**
   * The index of the first of some characters that stands outside of all strings and brackets, or
   * the length of the text.
   */
  static int end(String text, int from, String stops) {
    StringBuilder open = new StringBuilder();
    for (int i = from; i < text.length(); i++) {
      char c = text.charAt(i);
      if (open.isEmpty() && stops.indexOf(c) >= 0) {
        return i;
      }
      if (c == '\\') {
        i++;
      } else if (c == '"' || c == '\'') {
        i = stringEnd(text, i);
      } else if (isLast(open, c)) {
        open.setLength(open.length() - 1);
      } else if ("([{".indexOf(c) >= 0) {
        open.append(closing(c));
      }
    }
    return text.length();
  }

  /** The index of the quote that ends the string that begins here, or of the line's end. */
  static int stringEnd(String text, int from) {
    char quote = text.charAt(from);
    for (int i = from + 1; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\\') {
        i++;
      } else if (c == quote || c == '\n') {
        return i;
      }
    }
    return text.length();
  }

  /** The index behind a bracket that opens here, or the length of the text. */
  static int closed(String text, int open) {
    return Math.min(
        end(text, open + 1, String.valueOf(closing(text.charAt(open)))) + 1, text.length());
  }

  private static char closing(char open) {
    return switch (open) {
      case '(' -> ')';
      case '[' -> ']';
      default -> '}';
    };
  }

  /** Parts between separators that stand outside of strings and brackets, stripped. */
  static List<String> split(String text, String separators) {
    List<String> parts = new ArrayList<>();
    int from = 0;
    while (from <= text.length()) {
      int to = end(text, from, separators);
      parts.add(text.substring(from, to).strip());
      from = to + 1;
    }
    return parts;
  }

  private static boolean isLast(StringBuilder open, char c) {
    return !open.isEmpty() && open.charAt(open.length() - 1) == c;
  }

  /** Whether strings end and every bracket has its other one. */
  static boolean whole(String value) {
    StringBuilder open = new StringBuilder();
    for (int i = 0; i < value.length(); i++) {
      char c = value.charAt(i);
      if (c == '\\') {
        i++;
      } else if (c == '"' || c == '\'') {
        i = stringEnd(value, i);
        if (i >= value.length() || value.charAt(i) != c) {
          return false;
        }
      } else if (isLast(open, c)) {
        open.setLength(open.length() - 1);
      } else if ("([{".indexOf(c) >= 0) {
        open.append(closing(c));
      } else if (")]}".indexOf(c) >= 0) {
        return false;
      }
    }
    return open.isEmpty();
  }

  /** The text without comments; one between two names becomes a space, since it parts them. */
  static String withoutComments(String text) {
    if (!text.contains("/*")) {
      return text;
    }
    StringBuilder plain = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' || c == '\'') {
        int end = Math.min(stringEnd(text, i) + 1, text.length());
        plain.append(text, i, end);
        i = end - 1;
      } else if (c == '\\' && i + 1 < text.length()) {
        plain.append(c).append(text.charAt(++i));
      } else if (text.startsWith("/*", i)) {
        int end = text.indexOf("*/", i + 2);
        i = end < 0 ? text.length() : end + 1;
        boolean parts = plain.length() > 0 && isName(plain.charAt(plain.length() - 1));
        if (parts && i + 1 < text.length() && isName(text.charAt(i + 1))) {
          plain.append(' ');
        }
      } else {
        plain.append(c);
      }
    }
    return plain.toString();
  }

  /** Whether a character may stand in a name. */
  static boolean isName(char c) {
    return c == '-' || c == '_' || c >= 0x80 || Character.isLetterOrDigit(c);
  }

  /** The text between the brackets of a function that is the whole value, or null. */
  static @Nullable String arguments(String value, String function) {
    if (!value.regionMatches(true, 0, function + "(", 0, function.length() + 1)) {
      return null;
    }
    int close = closed(value, function.length());
    boolean all = close == value.length() && value.endsWith(")");
    return all ? value.substring(function.length() + 1, close - 1) : null;
  }
}
