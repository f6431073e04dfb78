package dev.placket.workbooks.room;

import dev.placket.workbooks.geometry.CellRange;
import dev.placket.workbooks.geometry.Grid;
import dev.placket.workbooks.geometry.Tracks;
import dev.placket.workbooks.read.DrawnThing;

/**
 * The cells that a picture or shape of the workbook may lie on, whatever a reader within the
 * tolerance makes of columns and rows.
 *
 * <p>What is tied to cells covers most of them where they are narrowest; what is tied to none
 * reaches furthest to the left where they are widest. Whole cells are kept clear, so that a wider
 * column cannot slide the thing under a picture.
 */
public final class Occupied {
  private final Grid narrow;
  private final Grid wide;

  /**
   * In worksheets of some columns and rows.
   *
   * @param narrow the narrowest that readers make them
   * @param wide the widest
   */
  public Occupied(Grid narrow, Grid wide) {
    this.narrow = narrow;
    this.wide = wide;
  }

  /** The cells of a thing. */
  public CellRange cells(DrawnThing thing) {
    DrawnThing.Spot from = thing.from();
    DrawnThing.Spot to = thing.to();
    int left;
    int top;
    long right;
    long bottom;
    if (from == null) {
      left = wide.columns().at(thing.x());
      top = wide.rows().at(thing.y());
      right = thing.x() + thing.width();
      bottom = thing.y() + thing.height();
    } else {
      left = within(from.column(), Grid.COLUMNS);
      top = within(from.row(), Grid.ROWS);
      right = narrow.columns().start(left) + from.across() + thing.width();
      bottom = narrow.rows().start(top) + from.down() + thing.height();
    }
    if (to != null) {
      right = narrow.columns().start(within(to.column(), Grid.COLUMNS)) + to.across();
      bottom = narrow.rows().start(within(to.row(), Grid.ROWS)) + to.down();
    }
    return new CellRange(
        left, top, end(narrow.columns(), left, right), end(narrow.rows(), top, bottom));
  }

  private static int within(int track, int count) {
    return Math.max(0, Math.min(count - 1, track));
  }

  /** The track after the one that holds the last EMU. */
  private static int end(Tracks tracks, int first, long stop) {
    return Math.max(first + 1, tracks.at(Math.max(0, stop - 1)) + 1);
  }
}
