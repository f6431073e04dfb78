package dev.placket.packs.text;

import dev.placket.pictures.typeface.Shaping;
import java.lang.Character.UnicodeScript;
import org.jspecify.annotations.Nullable;

/** Which scripts can be set letter by letter, from left to right. */
final class Script {
  private Script() {}

  /** Why a character cannot be set whatever the font; null where it can. */
  static @Nullable String refusal(int c) {
    int type = Character.getType(c);
    if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
      return "is a mark that has to be placed over another letter";
    }
    if (type == Character.CONTROL || type == Character.FORMAT || type == Character.SURROGATE) {
      return "is no letter but a control sign";
    }
    if (conjoining(c)) {
      return "is a part of a syllable that has to be joined";
    }
    String script = Shaping.script(c);
    return script == null ? null : "belongs to a script that needs shaping (" + script + ")";
  }

  /** Characters of a line without blanks: a line may break before and after each. */
  static boolean breaksAnywhere(int c) {
    return switch (UnicodeScript.of(c)) {
      case HAN, HIRAGANA, KATAKANA, BOPOMOFO, YI -> true;
      default -> false;
    };
  }

  /** Common practice: Chinese characters are not printed smaller than 2.5 mm. */
  static boolean wantsRoom(int c) {
    return breaksAnywhere(c) || UnicodeScript.of(c) == UnicodeScript.HANGUL;
  }

  private static boolean conjoining(int c) {
    return (c >= 0x1100 && c <= 0x11FF)
        || (c >= 0xA960 && c <= 0xA97F)
        || (c >= 0xD7B0 && c <= 0xD7FF);
  }
}
