package dev.placket.packs.text;

import java.util.ArrayList;
import java.util.List;

/**
 * Marks in a text that state which of the languages of a pack begins there. They are noncharacters
 * (Unicode 3.4), which no text to be printed has, take no room, and stay with their text where it
 * wraps.
 */
public final class LanguageMarks {
  /** The leading language, whose text needs no mark. */
  public static final int LEADING = 0;

  private static final int FIRST = 0xFDD0;
  private static final int LAST = 0xFDEF;

  private LanguageMarks() {}

  /**
   * A text with the language that it is in; what follows is in the leading one.
   *
   * @param language its number, 0 for the leading one, at most 31
   */
  public static String marked(String text, int language) {
    String plain = without(text);
    return language == LEADING || plain.isEmpty() ? plain : sign(language) + plain + sign(LEADING);
  }

  /** A text without marks. */
  public static String without(String text) {
    if (text.chars().noneMatch(LanguageMarks::isMark)) {
      return text;
    }
    StringBuilder plain = new StringBuilder();
    text.codePoints().filter(c -> !isMark(c)).forEach(plain::appendCodePoint);
    return plain.toString();
  }

  /** Whether a character is a mark. */
  static boolean isMark(int c) {
    return c >= FIRST && c <= LAST;
  }

  /** The language that a mark begins. */
  static int language(int mark) {
    return mark - FIRST;
  }

  /** Lines of one text, each beginning with the mark that is in force there. */
  static List<String> carried(List<String> lines) {
    List<String> carried = new ArrayList<>();
    int current = LEADING;
    for (String line : lines) {
      boolean own = !line.isEmpty() && isMark(line.charAt(0));
      carried.add(current == LEADING || own ? line : sign(current) + line);
      for (int c : line.codePoints().filter(LanguageMarks::isMark).toArray()) {
        current = language(c);
      }
    }
    return List.copyOf(carried);
  }

  private static String sign(int language) {
    return Character.toString(FIRST + language);
  }
}
