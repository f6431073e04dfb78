package dev.placket.layout.sheet;

/**
 * A rectangle of grid cells, named by the indexes of the lines round it, from 0.
 *
 * @param columnStart index of its left line
 * @param rowStart index of its top line
 * @param columnEnd index of its right line, above {@code columnStart}
 * @param rowEnd index of its bottom line, above {@code rowStart}
 */
public record GridArea(int columnStart, int rowStart, int columnEnd, int rowEnd) {
  /**
   * Checks the order of the lines.
   *
   * @throws IllegalArgumentException if the area holds no cell
   */
  public GridArea {
    if (columnStart < 0 || rowStart < 0 || columnEnd <= columnStart || rowEnd <= rowStart) {
      throw new IllegalArgumentException(
          "no grid area: columns "
              + columnStart
              + " to "
              + columnEnd
              + ", rows "
              + rowStart
              + " to "
              + rowEnd);
    }
  }
}
