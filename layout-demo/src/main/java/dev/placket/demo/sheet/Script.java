package dev.placket.demo.sheet;

import java.lang.Character.UnicodeScript;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Which scripts can be set letter by letter, from left to right. */
final class Script {
  /**
   * Scripts whose letters stand side by side unchanged; all others want shaping or run leftwards.
   */
  private static final Set<UnicodeScript> PLAIN =
      EnumSet.of(
          UnicodeScript.COMMON,
          UnicodeScript.LATIN,
          UnicodeScript.GREEK,
          UnicodeScript.CYRILLIC,
          UnicodeScript.ARMENIAN,
          UnicodeScript.GEORGIAN,
          UnicodeScript.CHEROKEE,
          UnicodeScript.ETHIOPIC,
          UnicodeScript.CANADIAN_ABORIGINAL,
          UnicodeScript.BOPOMOFO,
          UnicodeScript.HAN,
          UnicodeScript.HIRAGANA,
          UnicodeScript.KATAKANA,
          UnicodeScript.HANGUL,
          UnicodeScript.YI);

  private Script() {}

  /** Why a character cannot be set whatever the font; null where it can. */
  static @Nullable String refusal(int c) {
    UnicodeScript script = UnicodeScript.of(c);
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
    if (!PLAIN.contains(script)) {
      String name = script.name().toLowerCase(Locale.ROOT).replace('_', ' ');
      return "belongs to a script that needs shaping (" + name + ")";
    }
    return null;
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
