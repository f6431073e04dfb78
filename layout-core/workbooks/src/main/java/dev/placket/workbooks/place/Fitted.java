package dev.placket.workbooks.place;

import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.workbooks.read.Worksheet;
import dev.placket.workbooks.room.PageRoom;
import java.util.List;

/**
 * A worksheet with its flats placed on one of its printed pages.
 *
 * @param worksheet the worksheet
 * @param room the page
 * @param request what was asked of the solver
 * @param fit its answer, which the referee passed
 * @param pictures the flats as they go into the workbook
 */
public record Fitted(
    Worksheet worksheet, PageRoom room, FitRequest request, Fit fit, List<Anchored> pictures) {
  /** Copies the list. */
  public Fitted {
    pictures = List.copyOf(pictures);
  }
}
