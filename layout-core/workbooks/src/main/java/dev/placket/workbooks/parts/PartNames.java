package dev.placket.workbooks.parts;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HexFormat;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names of parts inside a package (ISO/IEC 29500-2), without the leading slash. */
public final class PartNames {
  /** Escapes of slashes stay: a part's name has none but those between its steps. */
  private static final Pattern ESCAPES = Pattern.compile("(?:%(?!2[fF]|5[cC])[0-9a-fA-F]{2})+");

  private PartNames() {}

  /** The part that holds the relations of another; of the package itself for the empty name. */
  public static String relationsOf(String part) {
    int slash = part.lastIndexOf('/') + 1;
    return part.substring(0, slash) + "_rels/" + part.substring(slash) + ".rels";
  }

  /** The part that a relation's target names, seen from the part that holds the relation. */
  public static String resolve(String from, String target) {
    Deque<String> path = new ArrayDeque<>();
    String slashed = target.replace('\\', '/');
    String whole = slashed.startsWith("/") ? slashed : folder(from) + slashed;
    for (String step : whole.split("/")) {
      if (step.equals("..")) {
        path.pollLast();
      } else if (!step.isEmpty() && !step.equals(".")) {
        path.addLast(step);
      }
    }
    return String.join("/", path);
  }

  /**
   * What two names have in common that mean one part: capitals of ASCII count as small letters
   * (ISO/IEC 29500-2, 6.2.2.3), and some writers begin names with a slash, part them by
   * backslashes, or write letters as percent escapes in one place and not in the other.
   */
  static String key(String name) {
    String plain = name.indexOf('%') < 0 ? name : unescaped(name);
    StringBuilder key = new StringBuilder();
    for (int i = 0; i < plain.length(); i++) {
      char c = plain.charAt(i);
      key.append(c == '\\' ? '/' : c >= 'A' && c <= 'Z' ? (char) (c + 'a' - 'A') : c);
    }
    return key.indexOf("/") == 0 ? key.substring(1) : key.toString();
  }

  /** With letters for percent escapes, except where they make no text. */
  private static String unescaped(String name) {
    return ESCAPES
        .matcher(name)
        .replaceAll(
            run -> {
              byte[] bytes = HexFormat.of().parseHex(run.group().replace("%", ""));
              String text = new String(bytes, StandardCharsets.UTF_8);
              return Matcher.quoteReplacement(text.indexOf('\uFFFD') < 0 ? text : run.group());
            });
  }

  private static String folder(String part) {
    return part.substring(0, part.lastIndexOf('/') + 1);
  }
}
