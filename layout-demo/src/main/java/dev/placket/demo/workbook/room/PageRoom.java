package dev.placket.demo.workbook.room;

import dev.placket.demo.workbook.geometry.CellRange;
import dev.placket.demo.workbook.geometry.Grid;
import dev.placket.demo.workbook.geometry.PrintPage;
import dev.placket.demo.workbook.read.Mark;
import dev.placket.layout.sheet.Sheet;
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
