package dev.placket.pictures.css;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** A small drawing whose sheets have been applied. */
final class Styled {
  private final Document document;
  private final List<StyleNote> notes;

  private Styled(Document document, List<StyleNote> notes) {
    this.document = document;
    this.notes = notes;
  }

  static Document parsed(String svg) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
    return factory
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
  }

  /** A drawing of 200 by 100 pixels with a sheet and what else is in it. */
  static Styled of(String css, String elements) throws Exception {
    Document document =
        parsed(
            "<svg xmlns='http://www.w3.org/2000/svg' id='root'><style><![CDATA["
                + css
                + "]]></style>"
                + elements
                + "</svg>");
    return new Styled(document, StyleSheets.apply(document, new PageSize(200, 100), 100_000));
  }

  /** What holds of a property of an element, or "" if nothing is stated there. */
  String value(String id, String property) {
    Element e = element(id);
    for (String declaration : List.of(e.getAttribute("style").split(";"))) {
      if (declaration.startsWith(property + ":")) {
        return declaration.substring(property.length() + 1);
      }
    }
    return e.getAttribute(property);
  }

  Element element(String id) {
    NodeList all = document.getElementsByTagNameNS("*", "*");
    for (int i = 0; i < all.getLength(); i++) {
      Element e = (Element) all.item(i);
      if (e.getAttribute("id").equals(id)) {
        return e;
      }
    }
    throw new AssertionError("no element " + id);
  }

  List<String> notes() {
    return notes.stream().map(StyleNote::text).toList();
  }
}
