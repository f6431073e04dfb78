package dev.placket.workbooks.write;

import dev.placket.workbooks.parts.Tag;
import dev.placket.workbooks.place.Anchored;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The text of a drawing part: our own pictures out, what the user drew untouched. */
final class DrawingText {
  private static final Pattern NAME = Pattern.compile("\\bname\\s*=\\s*(\"[^\"]*\"|'[^']*')");
  private static final Pattern ID =
      Pattern.compile("cNvPr\\s[^>]*?\\bid\\s*=\\s*[\"']([0-9]{1,9})[\"']");

  private DrawingText() {}

  /** The text without the pictures that this program put in. */
  static String withoutOwn(String xml) {
    StringBuilder kept = new StringBuilder();
    int at = 0;
    int from = -1;
    for (Tag tag : Tag.all(xml, 1)) {
      if (tag.depth() != 1) {
        continue;
      }
      from = tag.kind() == Tag.Kind.START ? tag.from() : from;
      if (tag.kind() == Tag.Kind.END && own(xml.substring(from, tag.to()))) {
        kept.append(xml, at, from);
        at = tag.to();
      }
    }
    return kept.append(xml.substring(at)).toString();
  }

  private static boolean own(String anchor) {
    for (Tag tag : Tag.all(anchor, Integer.MAX_VALUE)) {
      if (tag.local().equals("cNvPr")) {
        Matcher name = NAME.matcher(anchor.substring(tag.from(), tag.to()));
        return name.find() && name.group(1).startsWith(Anchored.OWN, 1);
      }
    }
    return false;
  }

  /** A number that no drawn thing has yet. */
  static int freeId(String xml) {
    int most = 1;
    Matcher ids = ID.matcher(xml);
    while (ids.find()) {
      most = Math.max(most, Integer.parseInt(ids.group(1)));
    }
    return most + 1;
  }

  /** Whether the text still uses a relation. */
  static boolean uses(String xml, String relation) {
    return List.of("\"" + relation + "\"", "'" + relation + "'").stream().anyMatch(xml::contains);
  }
}
