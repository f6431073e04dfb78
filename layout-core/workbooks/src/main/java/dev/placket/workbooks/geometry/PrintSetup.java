package dev.placket.workbooks.geometry;

import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * How a worksheet goes on paper.
 *
 * @param paper the way up it is used
 * @param margins round the printed cells
 * @param percent the printed size of what the worksheet holds, in hundredths; 10 to 400
 * @param fit the pages that it is to be fitted to instead; null where it is not
 * @param centredAcross whether it stands in the middle from left to right
 * @param centredDown whether it stands in the middle from top to bottom
 * @param areas what is printed, each on pages of its own; empty where that is not stated
 * @param titleRows rows that come again on every page; null for none
 * @param titleColumns columns that do; null for none
 * @param columnBreaks columns before which a page ends
 * @param rowBreaks rows before which a page ends
 */
public record PrintSetup(
    PaperSize paper,
    Margins margins,
    int percent,
    @Nullable FitPages fit,
    boolean centredAcross,
    boolean centredDown,
    List<CellRange> areas,
    @Nullable CellRange titleRows,
    @Nullable CellRange titleColumns,
    SortedSet<Integer> columnBreaks,
    SortedSet<Integer> rowBreaks) {
  /**
   * Pages that a worksheet is fitted to.
   *
   * @param across at most so many side by side; 0 for any number
   * @param down at most so many one below the other; 0 for any number
   */
  public record FitPages(int across, int down) {}

  /** Copies the collections. */
  public PrintSetup {
    areas = List.copyOf(areas);
    columnBreaks = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(columnBreaks));
    rowBreaks = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(rowBreaks));
  }
}
