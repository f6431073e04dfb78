package dev.placket.workbooks.show;

import java.text.Bidi;

/** A line of text in the order in which its letters stand, from left to right. */
final class VisualOrder {
  /** What is written the other way round from right to left, each beside its mirror image. */
  private static final String MIRRORED = "()[]{}<>«»‹›";

  private VisualOrder() {}

  /** By the Unicode Bidirectional Algorithm (UAX 9), as the JDK has it; tabs become blanks. */
  static String of(String line) {
    String text =
        line.codePoints()
            .map(c -> Character.isISOControl(c) ? ' ' : c)
            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
            .toString();
    Bidi bidi = new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
    if (bidi.isLeftToRight()) {
      return text;
    }
    int runs = bidi.getRunCount();
    byte[] levels = new byte[runs];
    String[] pieces = new String[runs];
    for (int i = 0; i < runs; i++) {
      levels[i] = (byte) bidi.getRunLevel(i);
      String piece = text.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
      pieces[i] = levels[i] % 2 == 0 ? piece : turned(piece);
    }
    Bidi.reorderVisually(levels, 0, pieces, 0, runs);
    return String.join("", pieces);
  }

  private static String turned(String piece) {
    StringBuilder turned = new StringBuilder(piece).reverse();
    for (int i = 0; i < turned.length(); i++) {
      int at = MIRRORED.indexOf(turned.charAt(i));
      if (at >= 0) {
        turned.setCharAt(i, MIRRORED.charAt(at ^ 1));
      }
    }
    return turned.toString();
  }
}
