package dev.placket.workbooks.room;

import dev.placket.layout.sheet.GridArea;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Parts overlapping blank windows into ones that do not overlap, the largest first; as they meet at
 * grid lines, they still act as one room.
 */
final class Windows {
  private final BlankSpaces ground;
  private final boolean[][] open;

  Windows(BlankSpaces ground, GridCuts columns, GridCuts rows) {
    this.ground = ground;
    this.open = new boolean[columns.spaces()][rows.spaces()];
  }

  /** The windows apart. */
  List<GridArea> apart(List<GridArea> blank) {
    for (GridArea a : blank) {
      paint(a, true);
    }
    List<GridArea> apart = new ArrayList<>();
    @Nullable GridArea next = blank.get(0);
    while (next != null) {
      apart.add(next);
      paint(next, false);
      next = largest(blank);
    }
    return apart;
  }

  private void paint(GridArea a, boolean with) {
    for (int c = a.columnStart(); c < a.columnEnd(); c++) {
      java.util.Arrays.fill(open[c], a.rowStart(), a.rowEnd(), with);
    }
  }

  /** The largest rectangle that is still open in any of the windows. */
  private @Nullable GridArea largest(List<GridArea> blank) {
    GridArea best = null;
    for (GridArea a : blank) {
      GridArea rest = rest(a);
      if (rest != null && (best == null || ground.area(rest) > ground.area(best))) {
        best = rest;
      }
    }
    return best;
  }

  /** The first open space of a window, grown to the right and then down. */
  private @Nullable GridArea rest(GridArea a) {
    for (int r = a.rowStart(); r < a.rowEnd(); r++) {
      for (int c = a.columnStart(); c < a.columnEnd(); c++) {
        if (open[c][r]) {
          return grown(a, c, r);
        }
      }
    }
    return null;
  }

  private GridArea grown(GridArea a, int left, int top) {
    int right = left;
    while (right < a.columnEnd() && open[right][top]) {
      right++;
    }
    int bottom = top + 1;
    while (bottom < a.rowEnd() && all(left, right, bottom)) {
      bottom++;
    }
    return new GridArea(left, top, right, bottom);
  }

  private boolean all(int left, int right, int row) {
    for (int c = left; c < right; c++) {
      if (!open[c][row]) {
        return false;
      }
    }
    return true;
  }
}
