package dev.placket.packs.text;

import dev.placket.layout.units.Rect;
import java.util.List;

/**
 * A row of a table where it lies on its sheet.
 *
 * @param table the table's name
 * @param row its number in the whole table, from 0
 * @param cells the boxes of its values, in points on the sheet, one for each column
 */
public record TableRow(String table, int row, List<Rect> cells) {
  /** Copies the list. */
  public TableRow {
    cells = List.copyOf(cells);
  }

  /** All of it, in points on the sheet. */
  public Rect box() {
    Rect first = cells.get(0);
    return new Rect(first.left(), first.top(), cells.get(cells.size() - 1).right(), first.bottom());
  }
}
