package dev.placket.layout.check;

import dev.placket.layout.flat.Flat;
import dev.placket.layout.sheet.GridArea;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.sheet.SheetWindow;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * Every footprint lies inside the margins and in the windows its flat may use.
 *
 * <p>It is judged by cells of the grid: each cell that the footprint enters belongs to one of the
 * windows. So windows that meet at a shared line act as one room, and windows apart by a track that
 * happens to have no width do not.
 */
final class RoomRules {
  private final Sheet sheet;
  private final List<BigDecimal> columns;
  private final List<BigDecimal> rows;
  private final Breaches breaches;

  private RoomRules(Sheet sheet, Breaches breaches) {
    this.sheet = sheet;
    this.columns = exact(sheet.lines().columns());
    this.rows = exact(sheet.lines().rows());
    this.breaches = breaches;
  }

  static void check(Sheet sheet, List<Placed> placed, Breaches breaches) {
    RoomRules rule = new RoomRules(sheet, breaches);
    ExactRect inside = inside(sheet);
    for (Placed p : placed) {
      BigDecimal beyond = p.footprint().beyond(inside);
      if (beyond.signum() > 0) {
        breaches.add("margins", p.id() + " runs " + Exact.pt(beyond) + " into the margin");
      }
      rule.checkWindows(p);
    }
  }

  private static List<BigDecimal> exact(List<Double> lines) {
    List<BigDecimal> exact = new ArrayList<>();
    lines.forEach(at -> exact.add(Exact.of(at)));
    return exact;
  }

  private static ExactRect inside(Sheet sheet) {
    Margins m = sheet.margins();
    return new ExactRect(
        Exact.of(m.left()),
        Exact.of(m.top()),
        Exact.of(sheet.paper().width()).subtract(Exact.of(m.right())),
        Exact.of(sheet.paper().height()).subtract(Exact.of(m.bottom())));
  }

  private void checkWindows(Placed p) {
    int right = columns.size() - 1;
    int bottom = rows.size() - 1;
    BigDecimal beyond = p.footprint().beyond(box(0, 0, right, bottom));
    if (beyond.signum() > 0) {
      breaches.add("window", p.id() + " runs " + Exact.pt(beyond) + " out of the grid");
      return;
    }
    for (int column = 0; column < right; column++) {
      for (int row = 0; row < bottom; row++) {
        BigDecimal apart = p.footprint().separation(box(column, row, column + 1, row + 1));
        GridArea cell = new GridArea(column, row, column + 1, row + 1);
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

  private ExactRect box(int left, int top, int right, int bottom) {
    return new ExactRect(columns.get(left), rows.get(top), columns.get(right), rows.get(bottom));
  }

  private static boolean isOpen(Sheet sheet, Flat flat, GridArea cell) {
    for (SheetWindow w : sheet.windows()) {
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
