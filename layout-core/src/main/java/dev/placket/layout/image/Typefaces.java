package dev.placket.layout.image;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;

/**
 * The typefaces in which a drawing's own text is set: those that are given, each under the family
 * name that it states, and Liberation Sans, which comes along, where none of them is asked for. No
 * font of the machine is used, so that a drawing looks the same on any. Java keeps a typeface that
 * it reads in a temporary file of its own.
 */
public final class Typefaces {
  /** Liberation Sans for all text. */
  public static final Typefaces SHIPPED = new Typefaces(List.of());

  private static final String FILE = "LiberationSans-Regular.ttf";

  private final List<Font> given;

  private Typefaces(List<Font> given) {
    this.given = List.copyOf(given);
  }

  /** Read when a drawing with text asks for it first. */
  private static final class Shipped {
    static final Font FONT = read();

    private static Font read() {
      try (InputStream in = Typefaces.class.getResourceAsStream(FILE)) {
        if (in == null) {
          throw new IllegalStateException(FILE + " is missing from the library");
        }
        return Font.createFont(Font.TRUETYPE_FONT, in);
      } catch (IOException | FontFormatException e) {
        throw new IllegalStateException(FILE + ": cannot be read", e);
      }
    }
  }

  /**
   * Reads typefaces; of two of one family the first is used.
   *
   * @param files TrueType or OpenType, one typeface each
   * @throws PictureException naming the file, if one cannot be read or is no typeface
   */
  public static Typefaces of(List<PictureSource> files) throws PictureException {
    return SHIPPED.with(files);
  }

  /**
   * These and, after them, those of files.
   *
   * @throws PictureException likewise
   */
  public Typefaces with(List<PictureSource> files) throws PictureException {
    List<Font> fonts = new ArrayList<>(given);
    for (PictureSource file : files) {
      try (InputStream in = file.open()) {
        fonts.add(Font.createFont(Font.TRUETYPE_FONT, in));
      } catch (FontFormatException e) {
        throw new PictureException(
            file.name() + ": is no typeface that can be used; give a TrueType file (.ttf)", e);
      } catch (IOException e) {
        throw RasterFile.cannotOpen(file.name(), e);
      }
    }
    return new Typefaces(fonts);
  }

  /** The family names of the typefaces that are given. */
  public List<String> families() {
    return given.stream().map(Typefaces::family).toList();
  }

  List<Font> given() {
    return given;
  }

  static Font shipped() {
    return Shipped.FONT;
  }

  /** In no language of the machine. */
  static String family(Font font) {
    return font.getFamily(java.util.Locale.ROOT);
  }
}
