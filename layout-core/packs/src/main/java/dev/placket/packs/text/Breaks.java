package dev.placket.packs.text;

import java.util.ArrayList;
import java.util.List;

/** The pieces between which a line may break; each but the first keeps the blank before it. */
public final class Breaks {
  /** Words of letters before this one stay whole. */
  private static final int FIRST_EAST_ASIAN = 0x1100;

  private Breaks() {}

  /** The pieces of a text, in order; joined they are the text. */
  public static List<String> words(String text) {
    List<String> words = new ArrayList<>();
    List<Integer> word = new ArrayList<>();
    boolean blank = false;
    for (int c : text.codePoints().toArray()) {
      // A blank that must not break is no white space to Java.
      if (!Character.isWhitespace(c)) {
        if (blank && !word.isEmpty()) {
          add(words, word);
          word.clear();
        }
        word.add(c);
        blank = false;
      } else {
        blank = true;
      }
    }
    add(words, word);
    return words;
  }

  /** The pieces of a word, the first with the blank before it. */
  private static void add(List<String> words, List<Integer> word) {
    if (word.stream().noneMatch(c -> c >= FIRST_EAST_ASIAN)) {
      StringBuilder whole = new StringBuilder(words.isEmpty() ? "" : " ");
      word.forEach(whole::appendCodePoint);
      words.add(whole.toString());
      return;
    }
    int[] letters = word.stream().mapToInt(c -> c).filter(c -> !LanguageMarks.isMark(c)).toArray();
    LineBreaks breaks = new LineBreaks(letters);
    StringBuilder piece = new StringBuilder(words.isEmpty() ? "" : " ");
    int at = 0;
    boolean marked = false;
    for (int c : word) {
      boolean mark = LanguageMarks.isMark(c);
      if (!marked && at > 0 && at < letters.length && breaks.before(at)) {
        words.add(piece.toString());
        piece.setLength(0);
      }
      piece.appendCodePoint(c);
      at += mark ? 0 : 1;
      marked = mark;
    }
    words.add(piece.toString());
  }
}
