package dev.placket.pictures.css;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What stands between the braces of a rule, or in a {@code style} attribute: declarations and rules
 * inside the rule. What is not understood is left out alone, up to the next semicolon or the end of
 * its braces (CSS Syntax 3, 5.4.4).
 *
 * @param declarations in their order
 * @param nested rules inside, each with its braces
 */
record Block(List<Declaration> declarations, List<String> nested) {
  private static final Pattern NAME =
      Pattern.compile("(--[\\w\\-\\x{80}-\\x{10ffff}]*|-?[A-Za-z_][\\w-]*)\\s*:");
  private static final Pattern IMPORTANT =
      Pattern.compile("!\\s*important\\s*$", Pattern.CASE_INSENSITIVE);

  /** Reads text without comments. */
  static Block of(String text, Notes notes) {
    Block block = new Block(new ArrayList<>(), new ArrayList<>());
    int i = 0;
    while (i < text.length()) {
      if (Character.isWhitespace(text.charAt(i)) || text.charAt(i) == ';') {
        i++;
      } else {
        i = block.read(text, i, notes);
      }
    }
    return block;
  }

  private int read(String text, int from, Notes notes) {
    Matcher name = NAME.matcher(text).region(from, text.length());
    boolean named = name.lookingAt();
    int semicolon = Scan.end(text, from, ";");
    boolean custom = named && name.group(1).startsWith("--");
    int brace = custom ? semicolon : Scan.end(text, from, ";{");
    if (brace < semicolon) {
      int close = Scan.closed(text, brace);
      nested.add(text.substring(from, close));
      return close;
    }
    String part = text.substring(from, semicolon);
    Declaration read = named ? declaration(name.group(1), text, name.end(), semicolon) : null;
    if (read == null) {
      notes.add("the style " + Notes.quoted(part) + " is not understood and is left out");
    } else {
      declarations.add(read);
    }
    return semicolon;
  }

  private static @Nullable Declaration declaration(String name, String text, int from, int to) {
    String value = text.substring(from, to).strip();
    Matcher important = IMPORTANT.matcher(value);
    boolean isImportant = value.indexOf('!') >= 0 && important.find();
    if (isImportant) {
      value = value.substring(0, important.start()).strip();
    }
    boolean custom = name.startsWith("--");
    if ((value.isEmpty() && !custom) || !Scan.whole(value) || hasMark(value)) {
      return null;
    }
    return new Declaration(custom ? name : name.toLowerCase(Locale.ROOT), value, isImportant);
  }

  /** An exclamation mark of no importance makes a value invalid. */
  private static boolean hasMark(String value) {
    return value.indexOf('!') >= 0 && Scan.end(value, 0, "!") < value.length();
  }
}
