package dev.placket.layout.image;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.NamingTable;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * A TrueType file.
 *
 * @param family the family name that it states
 * @param bytes all of it; nobody writes to them
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Typeface(String family, byte[] bytes) {
  /**
   * Reads a file's headers.
   *
   * @throws PictureException if it is no TrueType, or names no family
   */
  static Typeface of(String name, byte[] bytes) throws PictureException {
    try (TrueTypeFont font = parse(bytes)) {
      NamingTable names = font.getNaming();
      String family = names == null ? null : names.getFontFamily();
      if (family == null || family.isBlank() || font.getGlyph() == null) {
        throw new PictureException(name + ": names no family or has no outlines; give another");
      }
      return new Typeface(family, bytes);
    } catch (IOException | RuntimeException e) {
      throw new PictureException(
          name + ": is no typeface that can be used; give a TrueType file (.ttf)", e);
    }
  }

  /** The font, to be closed. */
  TrueTypeFont open() {
    try {
      return parse(bytes);
    } catch (IOException e) {
      throw new UncheckedIOException("was read before: " + family, e);
    }
  }

  private static TrueTypeFont parse(byte[] bytes) throws IOException {
    return new TTFParser(true).parse(new RandomAccessReadBuffer(bytes));
  }
}
