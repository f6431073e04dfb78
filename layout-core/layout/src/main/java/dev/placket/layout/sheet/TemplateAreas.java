package dev.placket.layout.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads a grid drawn as CSS Grid template strings: one string a row, one word a cell, {@code .} for
 * a blank cell.
 */
public final class TemplateAreas {
  private TemplateAreas() {}

  /**
   * The named areas in the order in which they first appear, row by row.
   *
   * @param rows one string for each row, each with the same number of words
   * @return each name with its area
   * @throws IllegalArgumentException naming row or area, if rows are empty or differ in length, or
   *     an area is no rectangle (CSS Grid 1, 7.3)
   */
  public static Map<String, GridArea> parse(List<String> rows) {
    String[][] cells = rows.stream().map(r -> r.strip().split("\\s+")).toArray(String[][]::new);
    if (rows.isEmpty() || rows.stream().anyMatch(String::isBlank)) {
      throw new IllegalArgumentException(
          "the areas have an empty row: draw each row, a blank cell as '.'");
    }
    Map<String, GridArea> areas = new LinkedHashMap<>();
    for (int r = 0; r < cells.length; r++) {
      if (cells[r].length != cells[0].length) {
        throw new IllegalArgumentException(
            "row "
                + (r + 1)
                + " of the areas has "
                + cells[r].length
                + " cells, the first has "
                + cells[0].length);
      }
      for (int c = 0; c < cells[r].length; c++) {
        if (!cells[r][c].matches("\\.+")) {
          int row = r;
          int column = c;
          areas.computeIfAbsent(cells[r][c], name -> grow(cells, row, column));
        }
      }
    }
    areas.forEach((name, area) -> checkWhole(cells, name, area));
    return areas;
  }

  private static GridArea grow(String[][] cells, int row, int column) {
    String name = cells[row][column];
    int right = column;
    while (right < cells[row].length && cells[row][right].equals(name)) {
      right++;
    }
    int bottom = row;
    while (bottom < cells.length
        && column < cells[bottom].length
        && cells[bottom][column].equals(name)) {
      bottom++;
    }
    return new GridArea(column, row, right, bottom);
  }

  private static void checkWhole(String[][] cells, String name, GridArea area) {
    for (int r = 0; r < cells.length; r++) {
      for (int c = 0; c < cells[r].length; c++) {
        boolean inside =
            r >= area.rowStart()
                && r < area.rowEnd()
                && c >= area.columnStart()
                && c < area.columnEnd();
        if (inside != cells[r][c].equals(name)) {
          throw new IllegalArgumentException(
              "area '" + name + "' is no rectangle: see row " + (r + 1) + ", cell " + (c + 1));
        }
      }
    }
  }
}
