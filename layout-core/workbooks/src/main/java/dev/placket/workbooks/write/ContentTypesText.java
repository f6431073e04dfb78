package dev.placket.workbooks.write;

import dev.placket.packs.text.Xml;
import dev.placket.workbooks.parts.Tag;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The text of the part that says what kind each part is (ISO/IEC 29500-2). */
final class ContentTypesText {
  private static final Pattern EXTENSION =
      Pattern.compile("\\bExtension\\s*=\\s*[\"']([^\"']*)[\"']");
  private static final Pattern TYPE = Pattern.compile("\\bContentType\\s*=\\s*[\"']([^\"']*)[\"']");
  private static final Pattern NAME = Pattern.compile("\\bPartName\\s*=\\s*[\"']([^\"']*)[\"']");

  private String xml;

  ContentTypesText(String xml) {
    this.xml = xml;
  }

  String text() {
    return xml;
  }

  /** Whether a part has a type of its own, be it there or not. */
  boolean names(String part) {
    return Tag.all(xml, 1).stream()
        .filter(t -> t.local().equals("Override"))
        .anyMatch(t -> value(NAME, xml.substring(t.from(), t.to())).equalsIgnoreCase("/" + part));
  }

  /** Says the kind of a part, unless that is said for its extension already. */
  void add(String part, String type) {
    String extension = part.substring(part.lastIndexOf('.') + 1);
    boolean defaulted = false;
    int defaultsEnd = -1;
    for (Tag tag : Tag.all(xml, 1)) {
      String text = xml.substring(tag.from(), tag.to());
      if (tag.local().equals("Default")) {
        defaultsEnd = tag.to();
        if (value(EXTENSION, text).equalsIgnoreCase(extension)) {
          defaulted = true;
          if (value(TYPE, text).equalsIgnoreCase(type)) {
            return;
          }
        }
      }
      if (tag.local().equals("Override") && value(NAME, text).equalsIgnoreCase("/" + part)) {
        return;
      }
    }
    // Types that an extension always has; any other is of the one part alone.
    boolean general = type.startsWith("image/") || type.equals(Spellings.RELATIONS_TYPE);
    if (general && !defaulted) {
      String text = element("Default", "Extension", extension, type);
      xml =
          defaultsEnd < 0
              ? Splice.append(xml, text)
              : xml.substring(0, defaultsEnd) + text + xml.substring(defaultsEnd);
    } else {
      xml = Splice.append(xml, element("Override", "PartName", "/" + part, type));
    }
  }

  private String element(String name, String attribute, String value, String type) {
    return "<"
        + Splice.prefix(xml)
        + name
        + " "
        + attribute
        + "=\""
        + Xml.escaped(value)
        + "\" ContentType=\""
        + type
        + "\"/>";
  }

  private static String value(Pattern pattern, String text) {
    Matcher m = pattern.matcher(text);
    return m.find() ? m.group(1) : "";
  }
}
