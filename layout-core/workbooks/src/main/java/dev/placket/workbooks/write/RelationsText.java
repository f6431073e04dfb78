package dev.placket.workbooks.write;

import dev.placket.packs.text.Xml;
import dev.placket.workbooks.parts.Tag;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The text of a part's relations. */
final class RelationsText {
  private static final Pattern ID = Pattern.compile("\\bId\\s*=\\s*[\"']([^\"']*)[\"']");
  private static final Pattern TARGET = Pattern.compile("\\bTarget\\s*=\\s*[\"']([^\"']*)[\"']");

  private String xml;

  RelationsText(String xml) {
    this.xml = xml;
  }

  static RelationsText empty() {
    return new RelationsText(
        "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n<Relationships xmlns=\""
            + Spellings.RELATIONS
            + "\"></Relationships>");
  }

  String text() {
    return xml;
  }

  /** Adds a relation under an id that is free. */
  String add(String type, String target) {
    int n = 1;
    while (DrawingText.uses(xml, "placket" + n)) {
      n++;
    }
    String id = "placket" + n;
    xml =
        Splice.append(
            xml,
            "<"
                + Splice.prefix(xml)
                + "Relationship Id=\""
                + id
                + "\" Type=\""
                + type
                + "\" Target=\""
                + Xml.escaped(target)
                + "\"/>");
    return id;
  }

  /**
   * Takes out relations by target and id.
   *
   * @param target which targets
   * @param id which ids
   */
  void remove(Predicate<String> target, Predicate<String> id) {
    StringBuilder kept = new StringBuilder();
    int at = 0;
    int from = 0;
    boolean goes = false;
    for (Tag tag : Tag.all(xml, 1)) {
      if (tag.depth() != 1) {
        continue;
      }
      if (tag.kind() != Tag.Kind.END) {
        String text = xml.substring(tag.from(), tag.to());
        from = tag.from();
        goes = target.test(value(TARGET, text)) && id.test(value(ID, text));
      }
      if (goes && tag.kind() != Tag.Kind.START) {
        kept.append(xml, at, from);
        at = tag.to();
      }
    }
    xml = kept.append(xml.substring(at)).toString();
  }

  private static String value(Pattern pattern, String text) {
    Matcher m = pattern.matcher(text);
    return m.find() ? m.group(1) : "";
  }
}
