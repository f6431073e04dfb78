package dev.placket.workbooks.write;

import dev.placket.workbooks.parts.Tag;
import java.util.List;
import java.util.Set;

/** Puts text into a part and takes text out of it; all the rest stays as it was. */
final class Splice {
  /** What comes after {@code drawing} in a worksheet (ISO/IEC 29500-1, CT_Worksheet). */
  private static final Set<String> AFTER_DRAWING =
      Set.of(
          "legacyDrawing",
          "legacyDrawingHF",
          "drawingHF",
          "picture",
          "oleObjects",
          "controls",
          "webPublishItems",
          "tableParts",
          "AlternateContent",
          "extLst");

  private Splice() {}

  /** Puts text in as the last thing that the root holds. */
  static String append(String xml, String text) {
    List<Tag> tags = Tag.all(xml, 0);
    Tag last = tags.get(tags.size() - 1);
    if (last.kind() == Tag.Kind.END) {
      return xml.substring(0, last.from()) + text + xml.substring(last.from());
    }
    int slash = xml.lastIndexOf('/', last.to());
    return xml.substring(0, slash)
        + ">"
        + text
        + "</"
        + last.name()
        + ">"
        + xml.substring(last.to());
  }

  /** Puts a worksheet's {@code drawing} where the schema wants it. */
  static String drawing(String worksheet, String relation, String namespace) {
    List<Tag> tags = Tag.all(worksheet, 1);
    String text =
        "<"
            + tags.get(0).prefix()
            + "drawing xmlns:r=\""
            + namespace
            + "\" r:id=\""
            + relation
            + "\"/>";
    for (Tag tag : tags) {
      boolean child = tag.depth() == 1 && tag.kind() != Tag.Kind.END;
      if (child && AFTER_DRAWING.contains(tag.local())) {
        return worksheet.substring(0, tag.from()) + text + worksheet.substring(tag.from());
      }
    }
    return append(worksheet, text);
  }

  /** The prefix that the root of a part has, with its colon. */
  static String prefix(String xml) {
    return Tag.all(xml, 0).get(0).prefix();
  }
}
