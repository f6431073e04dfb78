package dev.placket.workbooks.place;

import dev.placket.workbooks.geometry.Emu;

/**
 * From the paper to the worksheet: what is printed at 62 % has more EMU on the worksheet than on
 * paper, and its pixels print denser.
 *
 * @param percent the printed size of what the worksheet holds, in hundredths
 */
public record PrintedScale(int percent) {
  private static final double WHOLE = 100;

  /** The EMU on the worksheet of a printed length in points. */
  public double emu(double printedPoints) {
    return printedPoints * Emu.PER_POINT * WHOLE / percent;
  }

  /** The printed points of a length on the worksheet. */
  public double printedPoints(long emu) {
    return (double) emu * percent / WHOLE / Emu.PER_POINT;
  }

  /** The most whole EMU for one pixel at which it still prints as dense as that. */
  public long emuPerPixel(double pixelsPerPrintedInch) {
    return Math.max(1, (long) Math.floor(Emu.PER_INCH * WHOLE / percent / pixelsPerPrintedInch));
  }
}
