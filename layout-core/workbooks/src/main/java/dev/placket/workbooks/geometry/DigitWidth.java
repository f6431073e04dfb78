package dev.placket.workbooks.geometry;

import java.util.Locale;
import java.util.Map;

/**
 * The widest digit of a font in pixels at 96 to the inch, the measure of all column widths.
 *
 * <p>No font of the machine is asked, so that the same workbook gives the same fit everywhere:
 * digits of the common typefaces are kept as shares of the em (Adobe's metrics of the fourteen
 * standard PDF fonts for Helvetica, Times and Courier, and the faces made to their widths; the
 * others from memory).
 */
public final class DigitWidth {
  private static final double PIXELS_PER_POINT = 96.0 / 72;

  /** The share that gives the standard's example: 7 pixels at 11 points. */
  private static final double USUAL = 0.507;

  private static final Map<String, Double> SHARES =
      Map.ofEntries(
          Map.entry("arial", 0.556),
          Map.entry("calibri", 0.507),
          Map.entry("cambria", 0.554),
          Map.entry("carlito", 0.507),
          Map.entry("courier new", 0.600),
          Map.entry("dejavu sans", 0.636),
          Map.entry("helvetica", 0.556),
          Map.entry("liberation sans", 0.556),
          Map.entry("liberation serif", 0.500),
          Map.entry("tahoma", 0.546),
          Map.entry("times new roman", 0.500),
          Map.entry("verdana", 0.636));

  private DigitWidth() {}

  /**
   * Whole pixels of the widest digit, at least 1.
   *
   * @param font the typeface's name, whatever its letter case; an unknown one counts as usual
   * @param points its size; above zero
   */
  public static int pixels(String font, double points) {
    double share = SHARES.getOrDefault(font.toLowerCase(Locale.ROOT), USUAL);
    return (int) Math.max(1, Math.round(share * points * PIXELS_PER_POINT));
  }

  /** Whether the width of its digits is known. */
  public static boolean knows(String font) {
    return SHARES.containsKey(font.toLowerCase(Locale.ROOT));
  }
}
