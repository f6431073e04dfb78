package dev.placket.workbooks.place;

import dev.placket.workbooks.geometry.CellRange;
import dev.placket.workbooks.geometry.Grid;
import dev.placket.workbooks.geometry.PrintPage;
import dev.placket.workbooks.geometry.PrintPages;
import dev.placket.workbooks.read.DrawnThing;
import dev.placket.workbooks.read.Worksheet;
import dev.placket.workbooks.room.Occupied;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** The printed pages of a worksheet that flats may lie on, in the order in which to try them. */
final class Pages {
  /** More pages than these are not looked at: flats go onto one of the first. */
  private static final int MOST_PAGES = 400;

  private final Worksheet worksheet;
  private final PrintPages pages;
  private final CellRange whole;

  /**
   * Of a worksheet.
   *
   * @param tolerance by how many pixels programs may differ in the size of a column or row
   * @param windows ranges that pictures are meant for, which print them
   */
  Pages(Worksheet worksheet, int tolerance, Collection<CellRange> windows) {
    this.worksheet = worksheet;
    CellRange used = CellRange.cell(0, 0);
    used = worksheet.used() == null ? used : used.around(worksheet.used());
    Occupied occupied = new Occupied(worksheet.grid(), worksheet.grid());
    for (DrawnThing thing : worksheet.things()) {
      used = thing.name().startsWith(Anchored.OWN) ? used : used.around(occupied.cells(thing));
    }
    // A worksheet that is fitted to its pages would shrink for all of a window, filled or not.
    if (worksheet.setup().fit() == null) {
      for (CellRange window : windows) {
        used = used.around(bounded(window));
      }
    }
    this.whole = used;
    this.pages = new PrintPages(worksheet.grid(), tolerance, worksheet.setup());
  }

  /** Those that print what the worksheet holds: its print area, else all cells in use. */
  List<PrintPage> printed() {
    List<CellRange> areas = areas();
    List<PrintPage> all = new ArrayList<>();
    for (CellRange area : areas) {
      if (all.size() < MOST_PAGES) {
        all.addAll(pages.of(area, areas));
      }
    }
    return all.subList(0, Math.min(all.size(), MOST_PAGES));
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

  /** Whole columns and rows begin somewhere, and end where what is used does. */
  private static CellRange bounded(CellRange w) {
    int right = w.right() == Grid.COLUMNS ? w.left() + 1 : w.right();
    int bottom = w.bottom() == Grid.ROWS ? w.top() + 1 : w.bottom();
    return new CellRange(w.left(), w.top(), right, bottom);
  }

  /** What is printed, as its pages hold it. */
  List<CellRange> areas() {
    List<CellRange> stated = worksheet.setup().areas();
    return stated.isEmpty() ? List.of(whole) : stated.stream().map(a -> used(a, whole)).toList();
  }

  /** Whole columns or rows are printed as far as anything is used, and one of them at least. */
  private static CellRange used(CellRange a, CellRange whole) {
    int right = a.right() == Grid.COLUMNS ? Math.max(a.left() + 1, whole.right()) : a.right();
    int bottom = a.bottom() == Grid.ROWS ? Math.max(a.top() + 1, whole.bottom()) : a.bottom();
    return new CellRange(a.left(), a.top(), right, bottom);
  }
}
