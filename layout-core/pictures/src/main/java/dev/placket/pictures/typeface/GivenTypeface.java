package dev.placket.pictures.typeface;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.fault.Fault;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.NameRecord;
import org.apache.fontbox.ttf.NamingTable;
import org.apache.fontbox.ttf.OS2WindowsMetricsTable;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.jspecify.annotations.Nullable;

/**
 * A TrueType file.
 *
 * @param family the family name that it states, the typographic one first
 * @param weight from 1 to 1000; 400 is regular, 700 bold
 * @param italic whether it is italic or oblique
 * @param bytes all of it; nobody writes to them
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
public record GivenTypeface(String family, int weight, boolean italic, byte[] bytes) {
  static final int REGULAR = 400;
  static final int BOLD = 700;
  private static final int TYPOGRAPHIC_FAMILY = 16;

  /** OpenType, 'OS/2': bits 0 and 9 of fsSelection. */
  private static final int ITALIC_OR_OBLIQUE = 0x201;

  /**
   * Reads a file's headers.
   *
   * @throws PictureException if it is no TrueType, or names no family
   */
  static GivenTypeface of(String name, byte[] bytes) throws PictureException {
    try (TrueTypeFont font = parse(bytes)) {
      NamingTable names = font.getNaming();
      String family = names == null ? null : family(names);
      if (family == null || family.isBlank() || font.getGlyph() == null) {
        throw new PictureException(
            Fault.content(name, "names no family or has no outlines").remedy("give another"));
      }
      OS2WindowsMetricsTable os2 = font.getOS2Windows();
      int weight = os2 == null ? REGULAR : os2.getWeightClass();
      boolean italic = os2 != null && (os2.getFsSelection() & ITALIC_OR_OBLIQUE) != 0;
      return new GivenTypeface(
          family, weight < 1 || weight > 1000 ? REGULAR : weight, italic, bytes);
    } catch (IOException | RuntimeException e) {
      throw new PictureException(
          Fault.content(name, "is no typeface that can be used")
              .remedy("give a TrueType file (.ttf)"),
          e);
    }
  }

  /** OpenType, 'name': 16 is the family of all weights, 1 that of at most four. */
  private static @Nullable String family(NamingTable names) {
    String typographic =
        names.getName(
            TYPOGRAPHIC_FAMILY,
            NameRecord.PLATFORM_WINDOWS,
            NameRecord.ENCODING_WINDOWS_UNICODE_BMP,
            NameRecord.LANGUAGE_WINDOWS_EN_US);
    return typographic == null || typographic.isBlank() ? names.getFontFamily() : typographic;
  }

  /** The font, to be closed. */
  public TrueTypeFont open() {
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
