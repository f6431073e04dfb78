package dev.placket.workbooks.read;

import org.jspecify.annotations.Nullable;

/**
 * A picture or shape on a worksheet, with its anchor (ISO/IEC 29500-1, 20.5.2).
 *
 * @param name what the file calls it
 * @param embed the relation of its picture, null for a shape
 * @param from the cell its upper left corner keeps to; null for an absolute anchor
 * @param to the cell its lower right corner keeps to; null without one
 * @param x where an absolute anchor stands, in EMU from the worksheet's corner
 * @param y the same, downwards
 * @param width its width in EMU, 0 where its cells give it
 * @param height its height in EMU, 0 where its cells give it
 */
public record DrawnThing(
    String name,
    @Nullable String embed,
    @Nullable Spot from,
    @Nullable Spot to,
    long x,
    long y,
    long width,
    long height) {
  /**
   * A spot in a cell.
   *
   * @param column from 0
   * @param across from the column's left edge, in EMU
   * @param row from 0
   * @param down from the row's upper edge, in EMU
   */
  public record Spot(int column, long across, int row, long down) {}
}
