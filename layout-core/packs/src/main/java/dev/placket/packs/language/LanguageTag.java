package dev.placket.packs.language;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** Names of languages as BCP 47 has them, such as en, pt-BR or zh-Hans. */
public final class LanguageTag {
  private static final Pattern FORM = Pattern.compile("[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*");

  /** The script that a region writes Chinese in, by its likely subtags (Unicode CLDR). */
  private static final Map<String, String> WRITTEN =
      Map.of(
          "zh-cn", "zh-hans",
          "zh-sg", "zh-hans",
          "zh-tw", "zh-hant",
          "zh-hk", "zh-hant",
          "zh-mo", "zh-hant");

  private LanguageTag() {}

  /** Whether a name has the form of a tag. */
  public static boolean isTag(String name) {
    return FORM.matcher(name).matches();
  }

  /**
   * Whether text in one language serves for another: they are the same, or one is the other with
   * region or script added (RFC 4647, filtering). Simplified Chinese does not serve for
   * traditional.
   */
  public static boolean serves(String text, String wanted) {
    String a = written(text);
    String b = written(wanted);
    return a.equals(b) || a.startsWith(b + "-") || b.startsWith(a + "-");
  }

  private static String written(String tag) {
    String small = tag.toLowerCase(Locale.ROOT);
    return WRITTEN.getOrDefault(small, small);
  }
}
