package dev.placket.packs.text;

import java.util.ArrayList;
import java.util.List;

/** The pieces between which a line may break; each but the first keeps the blank before it. */
public final class Breaks {
  private static final String NOT_FIRST = "，。、；：？！）」』】》〉”’・ーぁぃぅぇぉっゃゅょァィゥェォッャュョ,.;:?!)";
  private static final String NOT_LAST = "（「『【《〈“‘(";

  private Breaks() {}

  /** The pieces of a text, in order; joined they are the text. */
  public static List<String> words(String text) {
    List<String> words = new ArrayList<>();
    StringBuilder word = new StringBuilder();
    StringBuilder marks = new StringBuilder();
    int before = 0;
    boolean blank = false;
    for (int c : text.codePoints().toArray()) {
      // A blank that must not break is no white space to Java.
      if (Character.isWhitespace(c)) {
        blank = true;
        continue;
      }
      if (LanguageMarks.isMark(c)) {
        marks.appendCodePoint(c);
        continue;
      }
      if (!word.isEmpty() && (blank || mayBreak(before, c))) {
        words.add(word.toString());
        word.setLength(0);
      }
      word.append(blank && !words.isEmpty() ? " " : "").append(marks).appendCodePoint(c);
      marks.setLength(0);
      before = c;
      blank = false;
    }
    words.add(word.append(marks).toString());
    return words;
  }

  private static boolean mayBreak(int before, int after) {
    return (Script.breaksAnywhere(before) || Script.breaksAnywhere(after))
        && NOT_FIRST.indexOf(after) < 0
        && NOT_LAST.indexOf(before) < 0;
  }
}
