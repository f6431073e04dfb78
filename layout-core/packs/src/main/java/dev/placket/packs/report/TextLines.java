package dev.placket.packs.report;

import dev.placket.pictures.fault.Visible;

/** Lines for a terminal, none longer than its width as far as words can be parted. */
public final class TextLines {
  private static final String STRONG = "\u001B[1m";
  private static final String PLAIN = "\u001B[22m";

  private final StringBuilder text = new StringBuilder();
  private final int width;
  private final boolean strong;

  /**
   * None yet.
   *
   * @param width the most columns of a line
   * @param strong whether headings may be set strong, by ECMA-48
   */
  public TextLines(int width, boolean strong) {
    this.width = width;
    this.strong = strong;
  }

  /** The most columns of a line. */
  public int width() {
    return width;
  }

  /** One line as it is. */
  public void line(String words) {
    text.append(Visible.line(words.stripTrailing())).append(System.lineSeparator());
  }

  /** A line to find one's way by. */
  public void heading(String words) {
    int from = text.length();
    wrapped("", words);
    if (strong) {
      int end = text.length() - System.lineSeparator().length();
      text.insert(end, PLAIN).insert(from, STRONG);
    }
  }

  /** Words over as many lines as they take; all but the first stand in by two more. */
  public void wrapped(String indent, String words) {
    wrapped(indent, indent + "  ", words);
  }

  /** Words over as many lines as they take. */
  public void wrapped(String first, String others, String words) {
    StringBuilder line = new StringBuilder(first);
    int start = line.length();
    for (String word : Visible.line(words).split(" ")) {
      boolean begun = line.length() > start;
      if (begun && TextWidth.of(line.toString()) + 1 + TextWidth.of(word) > width) {
        line(line.toString());
        line = new StringBuilder(others);
        start = line.length();
        begun = false;
      }
      line.append(begun ? " " : "").append(word);
    }
    line(line.toString());
  }

  /** A word with spaces behind it, so that it takes so many columns. */
  public static String padded(String word, int columns) {
    return word + " ".repeat(Math.max(0, columns - TextWidth.of(word)));
  }

  /** A word with spaces before it, so that it takes so many columns. */
  public static String flushRight(String word, int columns) {
    return " ".repeat(Math.max(0, columns - TextWidth.of(word))) + word;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
