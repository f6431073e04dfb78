package dev.placket.packs.description;

import java.util.List;

/**
 * The values of a range of cells.
 *
 * @param worksheet where it lies
 * @param rows its rows that are not empty, all of one length
 */
public record CellTable(String worksheet, List<Row> rows) {
  /** Copies the list. */
  public CellTable {
    rows = List.copyOf(rows);
  }

  /**
   * A row.
   *
   * @param number on the worksheet, from 1
   * @param values of its cells; empty texts for empty cells
   */
  public record Row(int number, List<String> values) {
    /** Copies the list. */
    public Row {
      values = List.copyOf(values);
    }
  }
}
