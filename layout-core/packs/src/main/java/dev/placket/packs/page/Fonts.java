package dev.placket.packs.page;

import dev.placket.packs.text.Typeface;
import java.io.IOException;
import java.util.IdentityHashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The typefaces of a document: each is embedded once, and only if something is set in it. */
final class Fonts {
  private final PDDocument document;
  private final Map<Typeface, PDType0Font> embedded = new IdentityHashMap<>();

  Fonts(PDDocument document) {
    this.document = document;
  }

  PDType0Font of(Typeface face) throws IOException {
    PDType0Font known = embedded.get(face);
    if (known != null) {
      return known;
    }
    PDType0Font font = PDType0Font.load(document, face.font(), true);
    embedded.put(face, font);
    return font;
  }
}
