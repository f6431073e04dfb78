package dev.placket.packs.text;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.OS2WindowsMetricsTable;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;

/** One TrueType font: which characters it has and how wide they are. */
public final class Typeface {
  private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  /** Where a font states no height of capitals: about that of most (common practice). */
  private static final double USUAL_CAPITALS = 0.7;

  private final String name;
  private final TrueTypeFont font;
  private final CmapLookup glyphs;
  private final double unitsPerEm;
  private final double capitals;

  private Typeface(String name, TrueTypeFont font) throws IOException {
    this.name = name;
    this.font = font;
    this.glyphs = font.getUnicodeCmapLookup();
    this.unitsPerEm = font.getUnitsPerEm();
    OS2WindowsMetricsTable metrics = font.getOS2Windows();
    double stated = metrics == null ? 0 : metrics.getCapHeight() / unitsPerEm;
    this.capitals = stated > 0 ? stated : USUAL_CAPITALS;
  }

  /** The typeface that comes with the program: Latin, Greek and Cyrillic, the same everywhere. */
  static Typeface builtIn() {
    try (InputStream in = PDDocument.class.getResourceAsStream(FILE)) {
      if (in == null) {
        throw new IllegalStateException("the typeface " + FILE + " is missing from the program");
      }
      return parse("the sheet's own typeface", in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * A typeface from the bytes of a TrueType file.
   *
   * @param name what messages call it
   * @throws IllegalArgumentException saying what the bytes are instead, or that the font forbids to
   *     be embedded
   */
  public static Typeface of(String name, byte[] bytes) {
    String kind =
        bytes.length < 4
            ? ""
            : new String(bytes, 0, 4, java.nio.charset.StandardCharsets.ISO_8859_1);
    String other =
        switch (kind) {
          case "OTTO" -> "a font with CFF outlines";
          case "ttcf" -> "a collection of fonts";
          case "wOFF", "wOF2" -> "a font packed for web pages";
          default -> null;
        };
    if (other != null) {
      throw new IllegalArgumentException(other);
    }
    try {
      Typeface face = parse(name, bytes);
      face.checkEmbeddable();
      face.advance('x');
      return face;
    } catch (IOException | RuntimeException e) {
      if (e instanceof IllegalArgumentException refused && e.getCause() == null) {
        throw refused;
      }
      throw new IllegalArgumentException("a file that is no TrueType font", e);
    }
  }

  private static Typeface parse(String name, byte[] bytes) throws IOException {
    TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(bytes));
    // Ligatures would part the printed widths from the measured ones.
    font.setEnableGsub(false);
    return new Typeface(name, font);
  }

  /** OpenType, OS/2 fsType: bit 1 alone forbids embedding, bit 9 allows bitmaps only. */
  private void checkEmbeddable() throws IOException {
    OS2WindowsMetricsTable metrics = font.getOS2Windows();
    int type = metrics == null ? 0 : metrics.getFsType();
    if ((type & 0xF) == 2 || (type & 0x200) != 0) {
      throw new IllegalArgumentException("a font whose licence bits forbid to embed it");
    }
  }

  /** What messages call it. */
  public String name() {
    return name;
  }

  /** The font itself, to be embedded. */
  public TrueTypeFont font() {
    return font;
  }

  /** Whether it has the character. */
  public boolean has(int codePoint) {
    return glyphs.getGlyphId(codePoint) != 0;
  }

  /** The character's advance width, as a share of the em. */
  public double advance(int codePoint) {
    try {
      return font.getAdvanceWidth(glyphs.getGlyphId(codePoint)) / unitsPerEm;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The character's outline, its em being 1 and its y pointing up.
   *
   * <p>One at a time: FontBox reads a glyph when it is first asked for, and keeps it.
   */
  public synchronized Shape outline(int codePoint) {
    try {
      GlyphData glyph = font.getGlyph().getGlyph(glyphs.getGlyphId(codePoint));
      double em = 1 / unitsPerEm;
      return glyph == null
          ? new Path2D.Double()
          : new Path2D.Double(glyph.getPath(), AffineTransform.getScaleInstance(em, em));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The height of its capitals, as a share of the em. */
  public double capitals() {
    return capitals;
  }
}
