package dev.placket.pictures.css;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * The style sheets of a drawing: applies the cascade for print and writes what holds for each
 * element into its own {@code style} attribute, so that a reader that knows no sheets draws it the
 * same.
 */
public final class StyleSheets {
  private StyleSheets() {}

  /**
   * Applies the sheets of a document and takes them out of it. Styles and presentation attributes
   * lose variables, sums and colours of newer notations on the way.
   *
   * @param document an SVG document, which is changed; it is left half done if this throws
   * @param page what the drawing shows
   * @param steps how much work may be done: tests of selectors, and characters of values
   * @return what was left out, in a designer's words
   * @throws TooManySteps if that does not do
   */
  public static List<StyleNote> apply(Document document, PageSize page, long steps)
      throws TooManySteps {
    Element root = document.getDocumentElement();
    Notes notes = new Notes();
    WorkBudget budget = new WorkBudget(steps);
    PrintMedia media = new PrintMedia(page, notes);
    PropertyValues values = new PropertyValues(page);
    Declarations declarations = new Declarations(values, notes);
    Sheets sheets = new Sheets(media, declarations, notes, budget);
    List<Element> elements = sheetsOf(root);
    for (Element sheet : elements) {
      String type = sheet.getAttribute("type").strip().toLowerCase(Locale.ROOT);
      if (!type.isEmpty() && !type.startsWith("text/css")) {
        notes.add("a style sheet of the kind " + Notes.quoted(type) + " is left out");
      } else if (media.answers(sheet.getAttribute("media"))) {
        sheets.add(sheet.getTextContent());
      }
    }
    SeeThroughPaints paints = new SeeThroughPaints(root);
    Cascade cascade = new Cascade(sheets.rules(), sheets.layers().ranks(), declarations, budget);
    new Styler(cascade, declarations, paints, budget).style(root, notes);
    elements.forEach(sheet -> sheet.getParentNode().removeChild(sheet));
    paints.add();
    return notes.all();
  }

  private static List<Element> sheetsOf(Element root) {
    List<Element> sheets = new ArrayList<>();
    NodeList all = root.getElementsByTagNameNS("http://www.w3.org/2000/svg", "style");
    for (int i = 0; i < all.getLength(); i++) {
      Node sheet = all.item(i);
      if (sheet instanceof Element e) {
        sheets.add(e);
      }
    }
    return sheets;
  }
}
