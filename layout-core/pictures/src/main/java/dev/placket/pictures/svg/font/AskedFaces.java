package dev.placket.pictures.svg.font;

import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.fault.ErrorText;
import dev.placket.pictures.svg.parse.SvgParser;
import dev.placket.pictures.typeface.FaceMatching;
import dev.placket.pictures.typeface.GivenTypeface;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.batik.bridge.CSSUtilities;
import org.apache.batik.css.engine.SVGCSSEngine;
import org.apache.batik.css.engine.value.Value;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** Finds text that asks for a bold or italic face that is not given. */
final class AskedFaces {
  private static final Set<String> LETTERED = Set.of("text", "tspan", "textPath", "tref", "a");

  /** From here on a weight is heavy: halfway from regular to bold and up. */
  private static final int HEAVY = 600;

  private final Set<String> missing = new LinkedHashSet<>();

  /**
   * Looks through all text of a document whose styles are known.
   *
   * @param families all faces by family in lower case; the last is used where none is asked for
   */
  void look(Document document, Map<String, List<GivenTypeface>> families) {
    NodeList all = document.getElementsByTagNameNS(SvgParser.SVG, "*");
    for (int i = 0; i < all.getLength(); i++) {
      Element e = (Element) all.item(i);
      if (LETTERED.contains(e.getLocalName()) && hasLetters(e)) {
        look(e, families);
      }
    }
  }

  private void look(Element e, Map<String, List<GivenTypeface>> families) {
    int weight = (int) style(e, SVGCSSEngine.FONT_WEIGHT_INDEX).getFloatValue();
    String style = style(e, SVGCSSEngine.FONT_STYLE_INDEX).getStringValue();
    boolean italic = !style.equals("normal");
    List<GivenTypeface> family = family(style(e, SVGCSSEngine.FONT_FAMILY_INDEX), families);
    GivenTypeface face = FaceMatching.find(family, weight, italic);
    if (face == null) {
      return;
    }
    boolean bold = weight >= HEAVY && face.weight() < HEAVY;
    boolean slanted = italic && !face.italic();
    if (bold || slanted) {
      missing.add(
          (bold && slanted ? "bold italic" : bold ? "bold" : "italic") + " of " + face.family());
    }
  }

  private static List<GivenTypeface> family(
      Value asked, Map<String, List<GivenTypeface>> families) {
    for (int i = 0; i < asked.getLength(); i++) {
      List<GivenTypeface> found =
          families.get(asked.item(i).getStringValue().toLowerCase(Locale.ROOT));
      if (found != null) {
        return found;
      }
    }
    List<GivenTypeface> last = List.of();
    for (List<GivenTypeface> each : families.values()) {
      last = each;
    }
    return last;
  }

  private static Value style(Element e, int property) {
    return CSSUtilities.getComputedStyle(e, property);
  }

  private static boolean hasLetters(Element e) {
    for (Node n = e.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n.getNodeType() == Node.TEXT_NODE && !n.getNodeValue().isBlank()) {
        return true;
      }
    }
    return false;
  }

  /** What to say of faces that are not given. */
  Stream<PictureNote> notes() {
    return missing.stream()
        .map(
            m ->
                PictureNote.changed(
                    "its "
                        + m.substring(0, m.indexOf(" of "))
                        + " lettering is set in another face; give the typeface "
                        + ErrorText.line(m.substring(m.indexOf(" of ") + 4))
                        + " in "
                        + m.substring(0, m.indexOf(" of "))
                        + ", or turn the text into paths"));
  }
}
