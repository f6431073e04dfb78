package dev.placket.packs.description;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The colourways of a style: which part has which colour in which of them.
 *
 * @param ways names of the colourways by code, in the order in which sheets show them
 * @param colours the colours by the words that parts have for them
 * @param parts the parts of the garment
 * @param printed what the table prints of a colour
 */
public record PackColourways(
    Map<String, Words> ways,
    Map<String, Colour> colours,
    Map<String, Part> parts,
    List<Printed> printed) {
  /** A part that a colourway does not have. */
  public static final String NO_PART = "none";

  /** What the table prints of a colour where nothing is stated. */
  public static final List<Printed> USUAL_PRINT =
      List.of(Printed.NAME, Printed.CODE, Printed.REFERENCE);

  /** Copies collections. */
  public PackColourways {
    ways = Pack.ordered(ways);
    colours = Pack.ordered(colours);
    parts = Pack.ordered(parts);
    printed = List.copyOf(printed);
  }

  /** What a table may print of a colour. */
  public enum Printed {
    /** Its name. */
    NAME,
    /** Its code in the label's palette or in a standard. */
    CODE,
    /** What the factory matches it to. */
    REFERENCE,
    /** The colour that fills drawings, as {@code #RRGGBB}. */
    SCREEN
  }

  /**
   * A colour.
   *
   * @param name its name
   * @param code its code in the label's palette or in a standard; blank for none
   * @param reference what the factory matches it to, as a lab dip or an approved swatch
   * @param screen the colour that fills drawings, as {@code #RRGGBB} in sRGB; null for none
   * @param lab the same in CIELAB, instead of {@code screen}; null for none
   */
  public record Colour(
      Words name, String code, Words reference, @Nullable String screen, @Nullable Lab lab) {}

  /**
   * A colour in CIELAB under D65, for the 2° observer, as sRGB has it (IEC 61966-2-1).
   *
   * @param l lightness, 0 to 100
   * @param a from green to red, −128 to 128
   * @param b from blue to yellow, −128 to 128
   */
  public record Lab(double l, double a, double b) {}

  /**
   * A part of the garment.
   *
   * @param name its name
   * @param fills areas of drawings that take its colour
   * @param lines groups of lines on them that stay readable, each with the areas it lies on
   * @param colours its colours, one for each colourway in their order, or one for all of them
   * @param reference what it is matched to, instead of the references of its colours; blank for
   *     those
   */
  public record Part(
      Words name,
      List<String> fills,
      Map<String, List<String>> lines,
      List<String> colours,
      Words reference) {
    /** Copies collections. */
    public Part {
      fills = List.copyOf(fills);
      Map<String, List<String>> copied = new LinkedHashMap<>();
      lines.forEach((group, areas) -> copied.put(group, List.copyOf(areas)));
      lines = Pack.ordered(copied);
      colours = List.copyOf(colours);
    }

    /**
     * The word for its colour in a colourway; null where none is stated.
     *
     * @param way the number of the colourway, from 0
     */
    public @Nullable String colour(int way) {
      int at = colours.size() == 1 ? 0 : way;
      return at < colours.size() ? colours.get(at) : null;
    }
  }
}
