package dev.placket.workbooks.geometry;

/**
 * The columns and rows of a worksheet, in EMU.
 *
 * @param columns from left to right
 * @param rows from top to bottom
 */
public record Grid(Tracks columns, Tracks rows) {
  /** How many columns a worksheet has (ISO/IEC 29500-1: the last is XFD). */
  public static final int COLUMNS = 16_384;

  /** How many rows a worksheet has. */
  public static final int ROWS = 1_048_576;

  /** The same grid with every visible track changed by so many pixels. */
  public Grid changed(int pixels) {
    long by = pixels * Emu.PER_PIXEL;
    return new Grid(columns.changed(by), rows.changed(by));
  }
}
