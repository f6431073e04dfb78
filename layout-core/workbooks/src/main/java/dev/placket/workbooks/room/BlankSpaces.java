package dev.placket.workbooks.room;

import dev.placket.layout.sheet.GridArea;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Which spaces of a page's grid are blank, and which lines between them are ruled.
 *
 * <p>A blank window is a rectangle of blank spaces that no rule crosses.
 */
final class BlankSpaces {
  private final GridCuts columns;
  private final GridCuts rows;
  private final boolean[][] covered;
  private final boolean[][] ruledAcross;
  private final boolean[][] ruledDown;

  BlankSpaces(GridCuts columns, GridCuts rows) {
    this.columns = columns;
    this.rows = rows;
    this.covered = new boolean[columns.spaces()][rows.spaces()];
    this.ruledAcross = new boolean[columns.spaces()][rows.spaces() + 1];
    this.ruledDown = new boolean[columns.spaces() + 1][rows.spaces()];
  }

  void cover(GridArea area) {
    for (int c = area.columnStart(); c < area.columnEnd(); c++) {
      Arrays.fill(covered[c], area.rowStart(), area.rowEnd(), true);
    }
  }

  /** Everything but what the other says is blank becomes covered, too. */
  void coverAllBut(boolean[][] open) {
    for (int c = 0; c < covered.length; c++) {
      for (int r = 0; r < covered[c].length; r++) {
        covered[c][r] |= !open[c][r];
      }
    }
  }

  void ruleLevel(int row, int from, int end) {
    for (int c = from; c < end; c++) {
      ruledAcross[c][row] = true;
    }
  }

  void ruleUpright(int column, int from, int end) {
    Arrays.fill(ruledDown[column], from, end, true);
  }

  boolean covered(int column, int row) {
    return covered[column][row];
  }

  /**
   * All blank windows of at least a size that are part of no larger one, the largest first. O(rows²
   * × columns).
   *
   * @param width at least, in points
   * @param height at least, in points
   */
  List<GridArea> windows(double width, double height) {
    List<GridArea> found = new ArrayList<>();
    for (int top = 0; top < rows.spaces(); top++) {
      boolean[] blank = new boolean[columns.spaces()];
      boolean[] upright = new boolean[columns.spaces() + 1];
      Arrays.fill(blank, true);
      for (int bottom = top + 1; bottom <= rows.spaces(); bottom++) {
        lower(blank, upright, top, bottom);
        if (rows.place(bottom) - rows.place(top) >= height) {
          runs(blank, upright, top, bottom, width, found);
        }
      }
    }
    found.sort(
        Comparator.comparingDouble((GridArea a) -> -area(a))
            .thenComparing(a -> a.rowStart())
            .thenComparing(a -> a.columnStart()));
    return found;
  }

  /** Takes one more row into what is known of the rows from top to bottom. */
  private void lower(boolean[] blank, boolean[] upright, int top, int bottom) {
    int row = bottom - 1;
    for (int c = 0; c < blank.length; c++) {
      blank[c] &= !covered[c][row] && (row == top || !ruledAcross[c][row]);
    }
    for (int line = 0; line < upright.length; line++) {
      upright[line] |= ruledDown[line][row];
    }
  }

  private void runs(
      boolean[] blank, boolean[] upright, int top, int bottom, double width, List<GridArea> found) {
    int c = 0;
    while (c < blank.length) {
      int left = c;
      while (c < blank.length && blank[c] && (c == left || !upright[c])) {
        c++;
      }
      if (c == left) {
        c++;
      } else if (columns.place(c) - columns.place(left) >= width
          && !goesOn(left, c, top - 1, top)
          && !goesOn(left, c, bottom, bottom)) {
        found.add(new GridArea(left, top, c, bottom));
      }
    }
  }

  /** Whether the columns are blank in that row too, with no rule on the line between. */
  private boolean goesOn(int left, int right, int row, int line) {
    if (row < 0 || row >= rows.spaces()) {
      return false;
    }
    for (int c = left; c < right; c++) {
      if (covered[c][row] || ruledAcross[c][line] || (c > left && ruledDown[c][row])) {
        return false;
      }
    }
    return true;
  }

  /** The size of an area in square points. */
  double area(GridArea a) {
    return (columns.place(a.columnEnd()) - columns.place(a.columnStart()))
        * (rows.place(a.rowEnd()) - rows.place(a.rowStart()));
  }

  /** The covered spaces as few rectangles that do not overlap. */
  List<GridArea> coveredAreas() {
    List<GridArea> areas = new ArrayList<>();
    boolean[][] done = new boolean[columns.spaces()][rows.spaces()];
    for (int r = 0; r < rows.spaces(); r++) {
      for (int c = 0; c < columns.spaces(); c++) {
        if (covered[c][r] && !done[c][r]) {
          GridArea a = grow(done, c, r);
          areas.add(a);
        }
      }
    }
    return areas;
  }

  private GridArea grow(boolean[][] done, int left, int top) {
    int right = left;
    while (right < columns.spaces() && covered[right][top] && !done[right][top]) {
      right++;
    }
    int bottom = top + 1;
    while (bottom < rows.spaces() && allCovered(done, left, right, bottom)) {
      bottom++;
    }
    for (int c = left; c < right; c++) {
      Arrays.fill(done[c], top, bottom, true);
    }
    return new GridArea(left, top, right, bottom);
  }

  private boolean allCovered(boolean[][] done, int left, int right, int row) {
    for (int c = left; c < right; c++) {
      if (!covered[c][row] || done[c][row]) {
        return false;
      }
    }
    return true;
  }
}
