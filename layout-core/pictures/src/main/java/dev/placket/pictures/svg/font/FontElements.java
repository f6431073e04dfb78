package dev.placket.pictures.svg.font;

import dev.placket.pictures.svg.parse.SvgParser;
import dev.placket.pictures.typeface.FaceMatching;
import dev.placket.pictures.typeface.GivenTypeface;
import dev.placket.pictures.typeface.PairKerning;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.HorizontalHeaderTable;
import org.apache.fontbox.ttf.KerningSubtable;
import org.apache.fontbox.ttf.KerningTable;
import org.apache.fontbox.ttf.TTFTable;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * A typeface as the {@code font} element of SVG 1.1 (clause 20), with the glyphs of some characters
 * alone: so Batik sets text in it without asking the machine for a font, and without the file that
 * Java writes for every font that it reads.
 */
final class FontElements {
  private static final String[] COMMANDS = {"M", "L", "Q", "C", "Z"};
  private static final int[] NUMBERS = {2, 2, 4, 6, 0};

  private final Document document;

  FontElements(Document document) {
    this.document = document;
  }

  /**
   * The element, not yet in the document; its first child is its {@code font-face}.
   *
   * @param family all faces of its family, itself among them
   * @param characters code points; those that the typeface lacks are left out, and taken out of the
   *     set
   */
  Element font(GivenTypeface typeface, List<GivenTypeface> family, Set<Integer> characters)
      throws IOException {
    try (TrueTypeFont ttf = typeface.open()) {
      HorizontalHeaderTable header = ttf.getHorizontalHeader();
      Element font = element("font");
      font.setAttributeNS(null, "horiz-adv-x", Integer.toString(ttf.getAdvanceWidth(0)));
      Element face = element("font-face");
      face.setAttributeNS(null, "font-family", typeface.family());
      face.setAttributeNS(null, "font-weight", FaceMatching.weights(family, typeface));
      face.setAttributeNS(null, "font-style", FaceMatching.styles(family, typeface));
      face.setAttributeNS(null, "units-per-em", Integer.toString(ttf.getUnitsPerEm()));
      face.setAttributeNS(null, "ascent", Integer.toString(header.getAscender()));
      face.setAttributeNS(null, "descent", Integer.toString(header.getDescender()));
      font.appendChild(face);
      font.appendChild(glyph("missing-glyph", ttf, 0));
      CmapLookup glyphs = ttf.getUnicodeCmapLookup();
      characters.removeIf(c -> glyphs.getGlyphId(c) == 0);
      for (int character : characters) {
        Element glyph = glyph("glyph", ttf, glyphs.getGlyphId(character));
        glyph.setAttributeNS(null, "unicode", Character.toString(character));
        font.appendChild(glyph);
      }
      kern(font, ttf, glyphs, characters);
      return font;
    }
  }

  /** Adds the kerning of the pairs that stand beside each other in the document's text. */
  private void kern(Element font, TrueTypeFont ttf, CmapLookup glyphs, Set<Integer> characters)
      throws IOException {
    TTFTable gpos = ttf.getTableMap().get("GPOS");
    PairKerning pairs = PairKerning.of(gpos == null ? new byte[0] : ttf.getTableBytes(gpos));
    KerningTable older = ttf.getKerning();
    KerningSubtable plain = older == null ? null : older.getHorizontalKerningSubtable();
    for (String pair : besideEachOther()) {
      int first = pair.codePointAt(0);
      int second = pair.codePointBefore(pair.length());
      if (!characters.contains(first) || !characters.contains(second)) {
        continue;
      }
      int left = glyphs.getGlyphId(first);
      int right = glyphs.getGlyphId(second);
      int more =
          pairs.isEmpty() && plain != null
              ? plain.getKerning(left, right)
              : pairs.between(left, right);
      if (more != 0) {
        Element kern = element("hkern");
        kern.setAttributeNS(null, "u1", Character.toString(first));
        kern.setAttributeNS(null, "u2", Character.toString(second));
        kern.setAttributeNS(null, "k", Integer.toString(-more));
        font.appendChild(kern);
      }
    }
  }

  private Set<String> besideEachOther() {
    Set<String> pairs = new TreeSet<>();
    NodeList texts = document.getElementsByTagNameNS(SvgParser.SVG, "text");
    for (int i = 0; i < texts.getLength(); i++) {
      int[] all = texts.item(i).getTextContent().strip().codePoints().toArray();
      for (int n = 1; n < all.length; n++) {
        pairs.add(Character.toString(all[n - 1]) + Character.toString(all[n]));
      }
    }
    return pairs;
  }

  private Element glyph(String name, TrueTypeFont font, int id) throws IOException {
    Element glyph = element(name);
    glyph.setAttributeNS(null, "horiz-adv-x", Integer.toString(font.getAdvanceWidth(id)));
    GlyphData outline = font.getGlyph().getGlyph(id);
    if (outline != null) {
      glyph.setAttributeNS(null, "d", path(outline.getPath().getPathIterator(null)));
    }
    return glyph;
  }

  private static String path(PathIterator i) {
    StringBuilder d = new StringBuilder();
    double[] at = new double[6];
    for (; !i.isDone(); i.next()) {
      int kind = i.currentSegment(at);
      d.append(COMMANDS[kind]);
      for (int n = 0; n < NUMBERS[kind]; n++) {
        d.append(n == 0 ? "" : " ").append(at[n]);
      }
    }
    return d.toString();
  }

  private Element element(String name) {
    return document.createElementNS(SvgParser.SVG, name);
  }
}
