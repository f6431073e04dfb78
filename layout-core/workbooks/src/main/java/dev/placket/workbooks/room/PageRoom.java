package dev.placket.workbooks.room;

import dev.placket.layout.sheet.Sheet;
import dev.placket.workbooks.geometry.CellRange;
import dev.placket.workbooks.geometry.Grid;
import dev.placket.workbooks.geometry.PrintPage;
import dev.placket.workbooks.read.Mark;
import java.util.List;

/**
 * The room of one printed page of a worksheet.
 *
 * @param page the page
 * @param narrow the narrowest that readers make columns and rows: what is solved on
 * @param sheet the page as the solver knows it
 * @param marks what stays uncovered, as far as it lies on this page
 * @param blank the blank windows, the largest first; they may share room
 */
public record PageRoom(
    PrintPage page, Grid narrow, Sheet sheet, List<Mark> marks, List<CellRange> blank) {
  /** Copies the lists. */
  public PageRoom {
    marks = List.copyOf(marks);
    blank = List.copyOf(blank);
  }
}
