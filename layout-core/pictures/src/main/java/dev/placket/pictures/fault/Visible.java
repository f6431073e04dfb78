package dev.placket.pictures.fault;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Texts of others on one line of a terminal: signs that steer it, break the line or turn its
 * direction are spelled out.
 */
public final class Visible {
  /** What Java calls an object that has no words of its own, which tells a reader nothing. */
  private static final Pattern OBJECT =
      Pattern.compile("\\b((?:[a-z_]\\w*\\.)+[A-Z][\\w$]*)@[0-9a-f]{1,8}\\b");

  private Visible() {}

  /** The text with such signs as {@code \n} or {@code \}{@code u001B}. */
  public static String line(String text) {
    StringBuilder seen = new StringBuilder(text.length());
    text.codePoints().forEach(c -> add(seen, c));
    return seen.toString();
  }

  /** The same for what a library says of a fault. */
  public static String words(String text) {
    return line(OBJECT.matcher(text).replaceAll("$1"));
  }

  private static void add(StringBuilder seen, int sign) {
    switch (sign) {
      case '\n' -> seen.append("\\n");
      case '\r' -> seen.append("\\r");
      case '\t' -> seen.append("\\t");
      default -> {
        if (isUnseen(sign)) {
          seen.append(String.format(Locale.ROOT, "\\u%04X", sign));
        } else {
          seen.appendCodePoint(sign);
        }
      }
    }
  }

  /** Control signs, halves of letters, line breaks, and those that turn direction (UAX 9). */
  public static boolean isUnseen(int sign) {
    return switch (Character.getType(sign)) {
      case Character.CONTROL,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default ->
          (sign >= 0x202A && sign <= 0x202E)
              || (sign >= 0x2066 && sign <= 0x2069)
              || sign == 0x200E
              || sign == 0x200F
              || sign == 0x061C
              || sign == 0xFEFF;
    };
  }
}
