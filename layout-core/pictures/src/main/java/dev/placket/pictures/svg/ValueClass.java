package dev.placket.pictures.svg;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** A class of value: words and named classes, apart by spaces; {@code *} is any value. */
final class ValueClass {
  private static final String NUMBER = "[+-]?(?:\\d++\\.?\\d*+|\\.\\d++)(?:[eE][+-]?\\d++)?+";
  private static final String UNIT = "(?:px|pt|pc|mm|cm|in|em|ex|%)?";
  private static final Pattern ONE_NUMBER = Pattern.compile(NUMBER);
  private static final Pattern PERCENTAGE = Pattern.compile(NUMBER + "%");
  private static final Pattern ANGLE = Pattern.compile(NUMBER + "(?:deg|grad|rad|turn)");
  private static final Pattern BY_TYPE =
      Pattern.compile(NUMBER + "e[mx]", Pattern.CASE_INSENSITIVE);
  private static final Pattern ONE_LENGTH =
      Pattern.compile(NUMBER + UNIT, Pattern.CASE_INSENSITIVE);
  private static final Pattern LENGTHS =
      Pattern.compile("(?:" + NUMBER + UNIT + "[\\s,]*+)++", Pattern.CASE_INSENSITIVE);
  private static final Pattern URL =
      Pattern.compile("url\\(\\s*[\"']?\\s*#[^\"')]*[\"']?\\s*\\)", Pattern.CASE_INSENSITIVE);
  private static final Pattern FALLBACK =
      Pattern.compile("url\\([^)]*\\)\\s*(?<rest>[^\\s].*)", Pattern.CASE_INSENSITIVE);
  private static final Pattern HEX = Pattern.compile("#(?:[0-9a-fA-F]{3}|[0-9a-fA-F]{6})");
  private static final Pattern RGB =
      Pattern.compile(
          "rgb\\((?:\\s*[+-]?\\d++\\s*,\\s*[+-]?\\d++\\s*,\\s*[+-]?\\d++\\s*"
              + "|\\s*[+-]?[\\d.]++%\\s*,\\s*[+-]?[\\d.]++%\\s*,\\s*[+-]?[\\d.]++%\\s*)\\)",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern TRANSFORM =
      Pattern.compile("(?:(?:matrix|translate|scale|rotate|skewX|skewY)\\s*\\([^()]*\\)[\\s,]*)*+");

  private final Set<String> words;
  private final Set<String> colours;

  /**
   * Takes a class apart.
   *
   * @param colours the colour names that count as colours
   */
  ValueClass(String written, Set<String> colours) {
    this.words = Set.of(written.split(" +"));
    this.colours = colours;
  }

  boolean matches(String value) {
    if (words.contains("*")) {
      return true;
    }
    String low = value.toLowerCase(Locale.ROOT);
    if (words.contains(low)) {
      return true;
    }
    for (String word : words) {
      if (word.startsWith("<") && is(word, value, low)) {
        return true;
      }
    }
    return false;
  }

  private boolean is(String word, String value, String low) {
    return switch (word) {
      case "<number>" -> ONE_NUMBER.matcher(value).matches();
      case "<percentage>" -> PERCENTAGE.matcher(value).matches();
      case "<angle>" -> ANGLE.matcher(value).matches();
      case "<em>" -> BY_TYPE.matcher(value).matches();
      case "<length>" -> ONE_LENGTH.matcher(value).matches();
      case "<lengths>" -> LENGTHS.matcher(value).matches();
      case "<colour>" -> colour(value, low);
      case "<url>" -> URL.matcher(value).matches();
      case "<fallback>" -> fallback(value);
      case "<transform>" -> TRANSFORM.matcher(value).matches();
      default -> throw new IllegalStateException("no such class of value: " + word);
    };
  }

  private boolean colour(String value, String low) {
    return colours.contains(low) || HEX.matcher(value).matches() || RGB.matcher(value).matches();
  }

  /** A reference with what to paint where it leads nowhere. */
  private boolean fallback(String value) {
    var m = FALLBACK.matcher(value);
    if (!m.matches()) {
      return false;
    }
    String rest = m.group("rest").strip();
    String low = rest.toLowerCase(Locale.ROOT);
    return low.equals("none") || low.equals("currentcolor") || colour(rest, low);
  }
}
