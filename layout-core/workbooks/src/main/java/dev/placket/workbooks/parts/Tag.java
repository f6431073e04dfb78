package dev.placket.workbooks.parts;

import java.util.ArrayList;
import java.util.List;

/**
 * A tag in the text of well-formed XML.
 *
 * @param kind how it opens or closes
 * @param name with its prefix
 * @param from where it begins in the text
 * @param to the place after it
 * @param depth how many elements it lies in: 0 for the root
 */
public record Tag(Kind kind, String name, int from, int to, int depth) {
  /** How a tag opens or closes an element. */
  public enum Kind {
    /** Opens. */
    START,
    /** Closes. */
    END,
    /** Both at once. */
    EMPTY
  }

  /** The name without prefix. */
  public String local() {
    return name.substring(name.indexOf(':') + 1);
  }

  /** The prefix with its colon, or nothing. */
  public String prefix() {
    return name.substring(0, name.indexOf(':') + 1);
  }

  /**
   * The tags down to a depth, in the order of the text, which has been parsed before and is known
   * to be sound. O(length).
   *
   * @param deepest the greatest depth that is wanted
   */
  public static List<Tag> all(String text, int deepest) {
    List<Tag> tags = new ArrayList<>();
    int depth = 0;
    int at = text.indexOf('<');
    while (at >= 0) {
      if (text.startsWith("<!--", at)) {
        at = text.indexOf("-->", at) + 3;
      } else if (text.startsWith("<![CDATA[", at)) {
        at = text.indexOf("]]>", at) + 3;
      } else if (text.startsWith("<?", at)) {
        at = text.indexOf("?>", at) + 2;
      } else {
        int to = end(text, at);
        boolean closes = text.charAt(at + 1) == '/';
        boolean empty = text.charAt(to - 2) == '/';
        depth -= closes ? 1 : 0;
        Kind kind = closes ? Kind.END : empty ? Kind.EMPTY : Kind.START;
        if (depth <= deepest) {
          tags.add(new Tag(kind, name(text, at + (closes ? 2 : 1)), at, to, depth));
        }
        depth += kind == Kind.START ? 1 : 0;
        at = to;
      }
      at = text.indexOf('<', at);
    }
    return tags;
  }

  /** The place after the tag's end; a closing bracket may stand in a value. */
  private static int end(String text, int from) {
    char quote = 0;
    for (int i = from; i < text.length(); i++) {
      char c = text.charAt(i);
      if (quote != 0) {
        quote = c == quote ? 0 : quote;
      } else if (c == '"' || c == '\'') {
        quote = c;
      } else if (c == '>') {
        return i + 1;
      }
    }
    throw new IllegalArgumentException("a tag without end at " + from);
  }

  private static String name(String text, int from) {
    int to = from;
    while (to < text.length() && " \t\r\n/>".indexOf(text.charAt(to)) < 0) {
      to++;
    }
    return text.substring(from, to);
  }
}
