package dev.placket.packs.report;

/** How many columns of a terminal a text takes. */
final class TextWidth {
  private TextWidth() {}

  /**
   * The columns: none for a mark that sits on the letter before it, two for a letter that is wide
   * as Unicode Standard Annex 11 says, one for any other.
   */
  static int of(String text) {
    return text.codePoints().map(TextWidth::of).sum();
  }

  private static int of(int letter) {
    int type = Character.getType(letter);
    if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
      return 0;
    }
    return wide(letter) ? 2 : 1;
  }

  private static boolean wide(int letter) {
    return within(letter, 0x1100, 0x115F)
        || within(letter, 0x2E80, 0xA4CF)
        || within(letter, 0xAC00, 0xD7A3)
        || within(letter, 0xF900, 0xFAFF)
        || within(letter, 0xFE30, 0xFE6F)
        || within(letter, 0xFF00, 0xFF60)
        || within(letter, 0xFFE0, 0xFFE6)
        || within(letter, 0x20000, 0x3FFFD);
  }

  private static boolean within(int letter, int first, int last) {
    return letter >= first && letter <= last;
  }
}
