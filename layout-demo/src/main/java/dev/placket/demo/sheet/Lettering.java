package dev.placket.demo.sheet;

import dev.placket.demo.Refusal;
import dev.placket.layout.units.Length;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * The one typeface of a sheet, measured by the height of its capitals.
 *
 * <p>Capital heights come from the steps of ISO 3098: 1.8, 2.5, 3.5 and 5 mm.
 */
public final class Lettering {
  /** Captions of cells. */
  public static final Length CAPTION = Length.mm(1.8);

  /** Values in cells. */
  public static final Length VALUE = Length.mm(2.5);

  /** What a reader looks for first. */
  public static final Length HEADING = Length.mm(3.5);

  /** The name over all. */
  public static final Length TITLE = Length.mm(5);

  /** Line to line, as a multiple of the capital height. */
  private static final double LEADING = 1.65;

  private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  private final TrueTypeFont font;
  private final CmapLookup glyphs;
  private final double unitsPerEm;
  private final double capitals;

  private Lettering(TrueTypeFont font) throws IOException {
    this.font = font;
    this.glyphs = font.getUnicodeCmapLookup();
    this.unitsPerEm = font.getUnitsPerEm();
    this.capitals = font.getOS2Windows().getCapHeight() / unitsPerEm;
  }

  /** Loads the typeface that comes with the program; no font of the machine is ever looked at. */
  public static Lettering load() {
    try (InputStream in = PDDocument.class.getResourceAsStream(FILE)) {
      if (in == null) {
        throw new IllegalStateException("the typeface " + FILE + " is missing from the program");
      }
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in));
      // Ligatures would part the printed widths from the measured ones.
      font.setEnableGsub(false);
      return new Lettering(font);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The typeface itself, to be embedded. */
  public TrueTypeFont font() {
    return font;
  }

  /** The size of the em at a capital height, in points. */
  public double em(Length capitalHeight) {
    return capitalHeight.pt() / capitals;
  }

  /** From one baseline to the next. */
  public Length leading(Length capitalHeight) {
    return capitalHeight.times(LEADING);
  }

  /** How wide a text is, in points. */
  public double width(String text, Length capitalHeight) {
    double units = text.codePoints().mapToDouble(this::advance).sum();
    return units / unitsPerEm * em(capitalHeight);
  }

  /**
   * Breaks a text at its line ends, and at its blanks into lines no wider than the room where a
   * single word allows it.
   *
   * @param room in points
   */
  public List<String> wrap(String text, Length capitalHeight, double room) {
    List<String> lines = new ArrayList<>();
    text.lines().forEach(part -> wrap(lines, part, capitalHeight, room));
    return List.copyOf(lines);
  }

  private void wrap(List<String> lines, String part, Length capitalHeight, double room) {
    String line = "";
    for (String word : part.strip().split("\\s+")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && width(longer, capitalHeight) > room) {
        lines.add(line);
        line = word;
      } else {
        line = longer;
      }
    }
    lines.add(line);
  }

  /**
   * Checks that every character can be set.
   *
   * @param text the text
   * @param where what messages call the place it came from
   * @throws Refusal naming place and character, if the typeface lacks it or its script needs
   *     shaping
   */
  public void check(String text, String where) throws Refusal {
    int[] points = text.codePoints().filter(c -> c != '\n').toArray();
    for (int c : points) {
      if (!plain(c) || glyphs.getGlyphId(c) == 0) {
        throw Refusal.input(
            where
                + ": '"
                + Character.toString(c)
                + "' (U+"
                + Integer.toHexString(0x10000 | c).substring(1).toUpperCase(java.util.Locale.ROOT)
                + ") is in none of the sheet's letters;"
                + " write it in Latin, Greek or Cyrillic letters.");
      }
    }
  }

  private static boolean plain(int c) {
    return switch (Character.UnicodeScript.of(c)) {
      case LATIN, GREEK, CYRILLIC, COMMON -> true;
      default -> false;
    };
  }

  private double advance(int codePoint) {
    try {
      return font.getAdvanceWidth(glyphs.getGlyphId(codePoint));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
