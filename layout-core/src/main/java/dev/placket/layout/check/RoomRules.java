package dev.placket.layout.check;

import dev.placket.layout.flat.Flat;
import dev.placket.layout.sheet.GridArea;
import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.sheet.Window;
import java.math.BigDecimal;
import java.util.List;

/**
 * Every footprint lies inside the margins and in the windows its flat may use.
 *
 * <p>It is judged by cells of the grid: each cell that the footprint enters belongs to one of the
 * windows. So windows that meet at a shared line act as one room, and windows apart by a track that
 * happens to have no width do not.
 */
final class RoomRules {
  private RoomRules() {}

  static void check(Sheet sheet, List<Placed> placed, Breaches breaches) {
    Rect inside = inside(sheet);
    for (Placed p : placed) {
      BigDecimal beyond = p.footprint().beyond(inside);
      if (beyond.signum() > 0) {
        breaches.add("margins", p.id() + " runs " + Exact.pt(beyond) + " into the margin");
      }
      checkWindows(sheet, p, breaches);
    }
  }

  private static Rect inside(Sheet sheet) {
    Margins m = sheet.margins();
    return new Rect(
        Exact.of(m.left()),
        Exact.of(m.top()),
        Exact.of(sheet.paper().width()).subtract(Exact.of(m.right())),
        Exact.of(sheet.paper().height()).subtract(Exact.of(m.bottom())));
  }

  private static void checkWindows(Sheet sheet, Placed p, Breaches breaches) {
    GridLines lines = sheet.lines();
    Rect grid =
        Rect.of(lines.box(new GridArea(0, 0, lines.columns().size() - 1, lines.rows().size() - 1)));
    BigDecimal beyond = p.footprint().beyond(grid);
    if (beyond.signum() > 0) {
      breaches.add("window", p.id() + " runs " + Exact.pt(beyond) + " out of the grid");
      return;
    }
    for (int column = 0; column + 1 < lines.columns().size(); column++) {
      for (int row = 0; row + 1 < lines.rows().size(); row++) {
        GridArea cell = new GridArea(column, row, column + 1, row + 1);
        Rect box = Rect.of(lines.box(cell));
        BigDecimal apart = p.footprint().separation(box);
        if (apart.signum() < 0 && !isOpen(sheet, p.flat(), cell)) {
          breaches.add(
              "window",
              p.id()
                  + " runs "
                  + Exact.pt(apart.negate())
                  + " into what is closed to it: column "
                  + (column + 1)
                  + ", row "
                  + (row + 1));
          return;
        }
      }
    }
  }

  private static boolean isOpen(Sheet sheet, Flat flat, GridArea cell) {
    for (Window w : sheet.windows()) {
      boolean mayUse = flat.windows().isEmpty() || flat.windows().contains(w.name());
      GridArea a = w.area();
      if (mayUse
          && a.columnStart() <= cell.columnStart()
          && a.columnEnd() >= cell.columnEnd()
          && a.rowStart() <= cell.rowStart()
          && a.rowEnd() >= cell.rowEnd()) {
        return true;
      }
    }
    return false;
  }
}
