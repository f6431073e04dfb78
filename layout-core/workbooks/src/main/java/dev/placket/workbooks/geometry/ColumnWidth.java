package dev.placket.workbooks.geometry;

/**
 * The width of a column, counted in digits of the workbook's default font (ISO/IEC 29500-1,
 * 18.3.1.13).
 */
public final class ColumnWidth {
  /** Two pixels of padding on either side and one for the line between cells. */
  private static final int PADDING = 5;

  private static final int FRACTIONS = 256;

  private ColumnWidth() {}

  /**
   * The width that a file states for a column which shows so many characters.
   *
   * @param characters how many digits it shows; not negative
   * @param digit the widest digit of the default font, in pixels; above zero
   */
  public static double ofCharacters(double characters, int digit) {
    return Math.floor((characters * digit + PADDING) / digit * FRACTIONS) / FRACTIONS;
  }

  /**
   * The whole pixels, 96 to the inch, of a column whose width a file states.
   *
   * @param width as the file states it, in digits; not negative
   * @param digit the widest digit of the default font, in pixels; above zero
   */
  public static int pixels(double width, int digit) {
    double rounding = Math.floor(FRACTIONS / 2.0 / digit);
    return (int) Math.floor((FRACTIONS * width + rounding) / FRACTIONS * digit);
  }
}
