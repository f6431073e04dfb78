package dev.placket.workbooks.geometry;

/**
 * English Metric Units, in which drawings on a worksheet are measured (ISO/IEC 29500-1): whole
 * numbers for inches, centimetres, points and pixels at once.
 */
public final class Emu {
  /** EMU to the inch. */
  public static final long PER_INCH = 914_400;

  /** EMU to the point of 1/72 inch. */
  public static final long PER_POINT = 12_700;

  /** EMU to the pixel, of which an inch has 96. */
  public static final long PER_PIXEL = 9_525;

  /** EMU to the metre. */
  public static final long PER_METRE = 36_000_000;

  private Emu() {}

  /** A length in points as the nearest whole EMU. */
  public static long ofPoints(double points) {
    return Math.round(points * PER_POINT);
  }
}
