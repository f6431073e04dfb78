package dev.placket.workbooks.geometry;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A rectangle of cells, counted from 0, the right and bottom bounds not included.
 *
 * @param left the first column
 * @param top the first row
 * @param right the column after the last, above {@code left}
 * @param bottom the row after the last, above {@code top}
 */
public record CellRange(int left, int top, int right, int bottom) {
  private static final Pattern CELL = Pattern.compile("\\$?([A-Za-z]{1,3})\\$?([1-9][0-9]{0,6})");
  private static final Pattern COLUMN = Pattern.compile("\\$?([A-Za-z]{1,3})");
  private static final Pattern ROW = Pattern.compile("\\$?([1-9][0-9]{0,6})");

  /**
   * Checks the bounds.
   *
   * @throws IllegalArgumentException if it holds no cell or leaves the worksheet
   */
  public CellRange {
    if (left < 0 || top < 0 || right <= left || bottom <= top) {
      throw new IllegalArgumentException(
          "no range: " + left + "," + top + "," + right + "," + bottom);
    }
    if (right > Grid.COLUMNS || bottom > Grid.ROWS) {
      throw new IllegalArgumentException("a range leaves the worksheet: " + right + ", " + bottom);
    }
  }

  /** One cell. */
  public static CellRange cell(int column, int row) {
    return new CellRange(column, row, column + 1, row + 1);
  }

  /**
   * Reads a range as formulas write it: {@code B2}, {@code $B$2:$H$40}, whole columns {@code B:D},
   * whole rows {@code 2:5}.
   *
   * @throws IllegalArgumentException naming the text, if it has another form
   */
  public static CellRange parse(String text) {
    String[] ends = text.strip().split(":", -1);
    String last = ends[ends.length - 1];
    if (ends.length <= 2) {
      int[] a = corner(ends[0], ends.length == 2);
      int[] b = corner(last, ends.length == 2);
      if (a.length > 0 && b.length > 0 && (a[0] < 0) == (b[0] < 0) && (a[1] < 0) == (b[1] < 0)) {
        return between(a, b);
      }
    }
    throw new IllegalArgumentException(
        "'" + text + "' is no range of cells; write it as in B2 or B2:H40");
  }

  private static CellRange between(int[] a, int[] b) {
    return new CellRange(
        a[0] < 0 ? 0 : Math.min(a[0], b[0]),
        a[1] < 0 ? 0 : Math.min(a[1], b[1]),
        a[0] < 0 ? Grid.COLUMNS : Math.max(a[0], b[0]) + 1,
        a[1] < 0 ? Grid.ROWS : Math.max(a[1], b[1]) + 1);
  }

  /** Column and row, -1 for one that is not named; empty for another form. */
  private static int[] corner(String text, boolean partly) {
    Matcher cell = CELL.matcher(text);
    if (cell.matches()) {
      return new int[] {column(cell.group(1)), Integer.parseInt(cell.group(2)) - 1};
    }
    Matcher column = COLUMN.matcher(text);
    if (partly && column.matches()) {
      return new int[] {column(column.group(1)), -1};
    }
    Matcher row = ROW.matcher(text);
    if (partly && row.matches()) {
      return new int[] {-1, Integer.parseInt(row.group(1)) - 1};
    }
    return new int[0];
  }

  private static int column(String letters) {
    int n = 0;
    for (char c : letters.toUpperCase(Locale.ROOT).toCharArray()) {
      n = n * 26 + (c - 'A' + 1);
    }
    return n - 1;
  }

  /** The letters of a column. */
  public static String letters(int column) {
    StringBuilder b = new StringBuilder();
    for (int n = column + 1; n > 0; n = (n - 1) / 26) {
      b.insert(0, (char) ('A' + (n - 1) % 26));
    }
    return b.toString();
  }

  /** Whether the two share a cell. */
  public boolean meets(CellRange o) {
    return left < o.right && o.left < right && top < o.bottom && o.top < bottom;
  }

  /** Whether the other lies in this one. */
  public boolean contains(CellRange o) {
    return left <= o.left && top <= o.top && right >= o.right && bottom >= o.bottom;
  }

  /** What the two share; only asked where they meet. */
  public CellRange common(CellRange o) {
    return new CellRange(
        Math.max(left, o.left),
        Math.max(top, o.top),
        Math.min(right, o.right),
        Math.min(bottom, o.bottom));
  }

  /** The least range that holds both. */
  public CellRange around(CellRange o) {
    return new CellRange(
        Math.min(left, o.left),
        Math.min(top, o.top),
        Math.max(right, o.right),
        Math.max(bottom, o.bottom));
  }

  /** As formulas write it. */
  @Override
  public String toString() {
    String first = letters(left) + (top + 1);
    String last = letters(right - 1) + bottom;
    return first.equals(last) ? first : first + ":" + last;
  }
}
