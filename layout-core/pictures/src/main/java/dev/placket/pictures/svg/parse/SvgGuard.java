package dev.placket.pictures.svg.parse;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What a drawing may hold: nothing that runs, and nothing that points outside the drawing. */
final class SvgGuard {
  private static final Set<String> REFUSED =
      Set.of("script", "foreignObject", "handler", "listener", "image", "font-face-uri");
  private static final Set<String> LEFT_OUT =
      Set.of(
          "metadata",
          "animate",
          "animateColor",
          "animateMotion",
          "animateTransform",
          "set",
          "cursor",
          "discard");
  private static final Pattern URL =
      Pattern.compile("url\\s*\\(\\s*['\"]?\\s*([^\\s'\")]*)", Pattern.CASE_INSENSITIVE);
  private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL);

  private static final Pattern LOADING =
      Pattern.compile(
          "@import\\s+[^;{}\\\\]*;?|@font-face\\s*\\{[^{}\\\\]*\\}?", Pattern.CASE_INSENSITIVE);

  /** What may take parts from another file, and is drawn by its own where that is not read. */
  private static final Set<String> LINKED =
      Set.of("linearGradient", "radialGradient", "pattern", "textPath");

  private SvgGuard() {}

  /** Whether a reference leads outside of the drawing that no reader follows. */
  static boolean leavesOutReference(String element, String local, String value) {
    return local.equals("href") && LINKED.contains(element) && !value.strip().startsWith("#");
  }

  /** Whether an element is passed over with all it holds: it draws nothing. */
  static boolean leavesOut(String uri, String local) {
    return !uri.equals(SvgParser.SVG) || LEFT_OUT.contains(local);
  }

  /** Whether an attribute is passed over: a foreign one, or the target of a link to click on. */
  static boolean leavesOutAttribute(String element, String uri, String local) {
    if (uri.equals("http://www.w3.org/XML/1998/namespace")) {
      return !local.equals("space") && !local.equals("lang");
    }
    if (uri.equals("http://www.w3.org/1999/xlink")) {
      return !local.equals("href") || element.equals("a");
    }
    return !uri.isEmpty() || (element.equals("a") && local.equals("href"));
  }

  /** What is wrong with an element, or null. */
  static @Nullable String element(String uri, String local) {
    if (!REFUSED.contains(local) || !uri.equals(SvgParser.SVG)) {
      return null;
    }
    if (local.equals("image")) {
      return "holds a picture inside the drawing (<image>), which is not read";
    }
    return "holds <" + local + ">, which no drawing here may";
  }

  /** What is wrong with an attribute, or null. */
  static @Nullable String attribute(String local, String value) {
    String low = local.toLowerCase(Locale.ROOT);
    if (low.startsWith("on")) {
      return "has the script '" + local + "'";
    }
    if (low.equals("href") && !value.strip().startsWith("#")) {
      return "points to '" + shortened(value) + "', outside the drawing";
    }
    if (low.equals("base")) {
      return "sets a base address";
    }
    return css(value);
  }

  /** What is wrong with style text or a presentation attribute, or null. */
  static @Nullable String css(String text) {
    if (text.indexOf('(') < 0 && text.indexOf('@') < 0) {
      return null;
    }
    // What loads a sheet or a typeface is left out with the style sheets; nothing is loaded.
    String plain = LOADING.matcher(COMMENT.matcher(text).replaceAll("")).replaceAll("");
    String low = plain.toLowerCase(Locale.ROOT);
    if (plain.indexOf('\\') >= 0 && (low.contains("(") || low.contains("@"))) {
      return "hides letters of its style behind backslashes";
    }
    Matcher m = URL.matcher(plain);
    while (m.find()) {
      if (!m.group(1).startsWith("#")) {
        return "points to '" + shortened(m.group(1)) + "', outside the drawing";
      }
    }
    return null;
  }

  private static String shortened(String value) {
    return value.length() <= 60 ? value : value.substring(0, 57) + "...";
  }
}
