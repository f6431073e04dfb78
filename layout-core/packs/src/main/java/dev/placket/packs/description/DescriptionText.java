package dev.placket.packs.description;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Changes to single values in the text of a description; all else stays as it was written, comments
 * and line ends too.
 */
public final class DescriptionText {
  private final String text;
  private final List<Edit> edits = new ArrayList<>();

  private record Edit(int from, int length, String by) {}

  /**
   * A text without changes.
   *
   * @param text the whole file, without a byte order mark
   */
  public DescriptionText(String text) {
    this.text = text;
  }

  /**
   * Puts another word in the place of one.
   *
   * @param at where it begins, or the quote before it
   * @return whether it stands there
   */
  public boolean replace(TextPosition at, String word, String by) {
    int from = offset(at);
    if (from >= 0 && (text.startsWith("'", from) || text.startsWith("\"", from))) {
      from++;
    }
    boolean there = from >= 0 && text.startsWith(word, from);
    if (there) {
      edits.add(new Edit(from, word.length(), by));
    }
    return there;
  }

  /**
   * Puts words behind one in a list, in brackets or one on each line.
   *
   * @param at where the word begins
   * @return whether it stands there in a list
   */
  public boolean append(TextPosition at, String word, List<String> more) {
    int from = offset(at);
    if (from < 0 || !text.startsWith(word, from)) {
      return false;
    }
    int end = from + word.length();
    int line = text.lastIndexOf('\n', from) + 1;
    String before = text.substring(line, from);
    if (before.isBlank() || !before.strip().equals("-")) {
      boolean bracket = text.substring(end).stripLeading().startsWith("]");
      if (bracket) {
        edits.add(new Edit(end, 0, ", " + String.join(", ", more)));
      }
      return bracket;
    }
    String lines = "\n" + before;
    edits.add(new Edit(end, 0, lines + String.join(lines, more)));
    return true;
  }

  /** Puts a line before one. */
  public void insert(TextPosition at, String line) {
    edits.add(new Edit(Math.max(0, offset(new TextPosition(at.line(), 1))), 0, line + "\n"));
  }

  /** The text with the changes. */
  public String changed() {
    StringBuilder changed = new StringBuilder(text);
    edits.stream()
        .sorted(Comparator.comparingInt(Edit::from).reversed())
        .forEach(e -> changed.replace(e.from, e.from + e.length, e.by));
    return changed.toString();
  }

  /** Where a place is in the text; -1 if the text ends before. */
  private int offset(TextPosition at) {
    int from = 0;
    for (int line = 1; line < at.line(); line++) {
      from = text.indexOf('\n', from) + 1;
      if (from == 0) {
        return -1;
      }
    }
    int points = text.codePointCount(from, text.length());
    return at.column() - 1 > points ? -1 : text.offsetByCodePoints(from, at.column() - 1);
  }
}
