package dev.placket.demo.workbook.place;

import dev.placket.demo.workbook.geometry.CellRange;
import dev.placket.demo.workbook.geometry.PrintPage;
import dev.placket.demo.workbook.geometry.PrintPages;
import dev.placket.demo.workbook.read.Worksheet;
import java.util.ArrayList;
import java.util.List;

/** The printed pages of a worksheet that flats may lie on, in the order in which to try them. */
final class Pages {
  private final Worksheet worksheet;
  private final PrintPages pages;

  Pages(Worksheet worksheet, int leeway) {
    this.worksheet = worksheet;
    this.pages = new PrintPages(worksheet.grid(), leeway, worksheet.setup());
  }

  /** Those that print what the worksheet holds: its print area, else all cells in use. */
  List<PrintPage> printed() {
    List<CellRange> areas = areas();
    List<PrintPage> all = new ArrayList<>();
    areas.forEach(a -> all.addAll(pages.of(a, areas)));
    return all;
  }

  /**
   * Where no print area is stated, all that goes on the first page beyond the cells in use, too.
   */
  List<PrintPage> beyond() {
    if (!worksheet.setup().areas().isEmpty()) {
      return List.of();
    }
    List<CellRange> areas = areas();
    return List.of(
        new PrintPage(
            pages.firstWholePage(areas.get(0), areas),
            pages.percent(areas),
            worksheet.setup().margins().left().pt(),
            worksheet.setup().margins().top().pt()));
  }

  private List<CellRange> areas() {
    CellRange used = worksheet.used();
    CellRange whole = used == null ? CellRange.cell(0, 0) : CellRange.cell(0, 0).around(used);
    List<CellRange> stated = worksheet.setup().areas();
    return stated.isEmpty()
        ? List.of(whole)
        : stated.stream().map(a -> endless(a) ? a.common(whole) : a).toList();
  }

  /** Whole columns or rows are printed as far as they are used. */
  private static boolean endless(CellRange a) {
    return a.right() == dev.placket.demo.workbook.geometry.Grid.COLUMNS
        || a.bottom() == dev.placket.demo.workbook.geometry.Grid.ROWS;
  }
}
