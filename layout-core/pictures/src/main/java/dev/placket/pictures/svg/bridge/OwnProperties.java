package dev.placket.pictures.svg.bridge;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;

/** Properties that Batik knows nothing of, as an element gives them. */
final class OwnProperties {
  private OwnProperties() {}

  /** The value in the style, else that of the attribute, else "". */
  static String own(Element e, String property) {
    Matcher m =
        Pattern.compile("(?:^|;)\\s*" + property + "\\s*:\\s*([^;!]*)")
            .matcher(e.getAttributeNS(null, "style"));
    String found = e.getAttributeNS(null, property);
    while (m.find()) {
      found = m.group(1);
    }
    return found.strip();
  }
}
