package dev.placket.packs.text;

import static dev.placket.packs.text.LineClass.AL;
import static dev.placket.packs.text.LineClass.B2;
import static dev.placket.packs.text.LineClass.BA;
import static dev.placket.packs.text.LineClass.BB;
import static dev.placket.packs.text.LineClass.CL;
import static dev.placket.packs.text.LineClass.CP;
import static dev.placket.packs.text.LineClass.EX;
import static dev.placket.packs.text.LineClass.GL;
import static dev.placket.packs.text.LineClass.HY;
import static dev.placket.packs.text.LineClass.ID;
import static dev.placket.packs.text.LineClass.IN;
import static dev.placket.packs.text.LineClass.IS;
import static dev.placket.packs.text.LineClass.NS;
import static dev.placket.packs.text.LineClass.NU;
import static dev.placket.packs.text.LineClass.OP;
import static dev.placket.packs.text.LineClass.PO;
import static dev.placket.packs.text.LineClass.PR;
import static dev.placket.packs.text.LineClass.QF;
import static dev.placket.packs.text.LineClass.QI;
import static dev.placket.packs.text.LineClass.QU;
import static dev.placket.packs.text.LineClass.SY;

import java.util.EnumSet;
import java.util.Set;

/**
 * Where a line of a word, text without blanks, may break: by UAX #14 (Unicode 16), at an East Asian
 * character. Between others it never does: Latin words stay whole, and Korean breaks at blanks
 * alone.
 */
final class LineBreaks {
  /** No break before these: LB13, LB15d, LB21, LB22. */
  private static final Set<LineClass> NOT_FIRST = EnumSet.of(CL, CP, EX, SY, IS, BA, HY, NS, IN);

  private static final Set<LineClass> QUOTES = EnumSet.of(QU, QI, QF);

  private final int[] text;

  /**
   * Breaks of a word.
   *
   * @param text its characters, without blanks and marks
   */
  LineBreaks(int[] text) {
    this.text = text;
  }

  /** Whether a line may end before a character. */
  boolean before(int at) {
    int a = text[at - 1];
    int b = text[at];
    if (!LineClass.isEastAsian(a) && !LineClass.isEastAsian(b)) {
      return false;
    }
    LineClass left = LineClass.of(a);
    LineClass right = LineClass.of(b);
    boolean glued = left == GL || right == GL && left != BA && left != HY;
    boolean open = left == OP || left == BB || opening(at - 1);
    boolean close = NOT_FIRST.contains(right) || closing(at);
    boolean dashes = left == B2 && right == B2;
    return !glued && !open && !close && !dashes && !quoted(at, left, right) && !number(at);
  }

  private boolean eastAsian(int at) {
    return at >= 0 && at < text.length && LineClass.isEastAsian(text[at]);
  }

  /** LB15a: a quote that opens after nothing, an opening sign or a quote. */
  private boolean opening(int at) {
    if (LineClass.of(text[at]) != QI) {
      return false;
    }
    LineClass before = at == 0 ? OP : LineClass.of(text[at - 1]);
    return before == OP || before == GL || QUOTES.contains(before);
  }

  /** LB15b: a quote that closes before nothing, a closing sign or a quote. */
  private boolean closing(int at) {
    if (LineClass.of(text[at]) != QF) {
      return false;
    }
    LineClass after = at + 1 == text.length ? CL : LineClass.of(text[at + 1]);
    boolean sign = EnumSet.of(GL, CL, CP, EX, IS, SY).contains(after);
    return sign || QUOTES.contains(after);
  }

  /** LB19, LB19a: a break at a quote only on its outside, among East Asian characters. */
  private boolean quoted(int at, LineClass left, LineClass right) {
    boolean before =
        QUOTES.contains(right) && (right != QI || !eastAsian(at - 1) || !eastAsian(at + 1));
    boolean after = QUOTES.contains(left) && (left != QF || !eastAsian(at) || !eastAsian(at - 2));
    return before || after;
  }

  /** LB23a, LB24, LB25: a sign stays with its number or its word. */
  private boolean number(int at) {
    LineClass left = LineClass.of(text[at - 1]);
    LineClass right = LineClass.of(text[at]);
    boolean sign = left == PR || left == PO;
    boolean after = right == PR || right == PO;
    if (left == PR && right == ID || left == ID && right == PO) {
      return true;
    }
    if (sign && (right == AL || right == NU) || after && (left == AL || left == NU)) {
      return true;
    }
    if (after && (left == IS || left == SY)) {
      return numberEndsAt(at - 1);
    }
    if (after && (left == CL || left == CP)) {
      return numberEndsAt(at - 2);
    }
    return sign && right == OP && numberBeginsAt(at + 1);
  }

  private boolean numberEndsAt(int at) {
    int i = at;
    while (i >= 0 && (LineClass.of(text[i]) == IS || LineClass.of(text[i]) == SY)) {
      i--;
    }
    return i >= 0 && LineClass.of(text[i]) == NU;
  }

  private boolean numberBeginsAt(int at) {
    int i = at < text.length && LineClass.of(text[at]) == IS ? at + 1 : at;
    return i < text.length && LineClass.of(text[i]) == NU;
  }
}
