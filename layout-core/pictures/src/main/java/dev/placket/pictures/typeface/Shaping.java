package dev.placket.pictures.typeface;

import java.lang.Character.UnicodeScript;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Which scripts can be set letter by letter, from left to right. */
public final class Shaping {
  /**
   * Scripts whose letters stand side by side unchanged; all others want shaping or run leftwards.
   */
  private static final Set<UnicodeScript> PLAIN =
      EnumSet.of(
          UnicodeScript.COMMON,
          UnicodeScript.INHERITED,
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

  private Shaping() {}

  /**
   * The script of a character that cannot be set without shaping, as in "arabic"; null where it
   * can.
   *
   * @param character a code point
   */
  public static @Nullable String script(int character) {
    UnicodeScript script = UnicodeScript.of(character);
    return PLAIN.contains(script) ? null : script.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
