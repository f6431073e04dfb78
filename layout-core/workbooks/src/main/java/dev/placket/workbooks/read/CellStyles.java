package dev.placket.workbooks.read;

import dev.placket.workbooks.geometry.DigitWidth;
import java.util.List;

/**
 * How cells look, as far as it matters to pictures.
 *
 * @param font the default font's name
 * @param points its size
 * @param looks one for each cell format, in the order of the file
 */
public record CellStyles(String font, double points, List<Look> looks) {
  /** What a workbook without styles has. */
  public static final CellStyles NONE = new CellStyles("", 11, List.of());

  /** How far text keeps to its cell. */
  public enum Align {
    /** Runs out to the right where it is too long. */
    LEFT,
    /** Runs out to the left. */
    RIGHT,
    /** Runs out to both sides. */
    CENTRE,
    /** Never runs out. */
    KEPT
  }

  /**
   * The look of a cell.
   *
   * @param points the size of its font
   * @param bold whether it is bold
   * @param align how its text runs
   * @param filled whether its ground is anything but white
   * @param left the width of its left rule in pixels, 0 for none
   * @param top the width of its upper rule
   * @param right the width of its right rule
   * @param bottom the width of its lower rule
   */
  public record Look(
      double points,
      boolean bold,
      Align align,
      boolean filled,
      double left,
      double top,
      double right,
      double bottom) {
    static final Look PLAIN = new Look(11, false, Align.LEFT, false, 0, 0, 0, 0);

    /** Whether it has any rule. */
    public boolean ruled() {
      return left + top + right + bottom > 0;
    }
  }

  /** Copies the list. */
  public CellStyles {
    looks = List.copyOf(looks);
  }

  /** The look of a cell format; plain for one that is not there. */
  public Look look(int format) {
    return format >= 0 && format < looks.size() ? looks.get(format) : Look.PLAIN;
  }

  /** The widest digit of the default font in pixels. */
  public int digit() {
    return DigitWidth.pixels(font, points);
  }
}
