package dev.placket.layout.solve.finish;

import static dev.placket.layout.solve.finish.Footprint.exact;

import dev.placket.layout.flat.Flat;
import dev.placket.layout.sheet.GridArea;
import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.Rule;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.sheet.SheetWindow;
import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.units.Rect;
import java.math.BigDecimal;
import java.util.List;

/**
 * Whether rounded placements keep every distance exactly, with no tolerance at all.
 *
 * <p>Where doubles leave no doubt they decide; only what is closer than that is worked out in
 * decimals.
 */
final class CheckExactly {
  private static final double DOUBT = 1e-8;

  private final Model model;
  private final Sheet sheet;
  private final Plan plan;

  CheckExactly(Model model, Plan plan) {
    this.model = model;
    this.plan = plan;
    this.sheet = model.request.sheet();
  }

  /** Whether the footprints, one for each flat, keep all distances. */
  boolean holds(Footprint[] boxes) {
    for (int i = 0; i < boxes.length; i++) {
      if (!insideMargins(boxes[i])
          || !insideWindows(model.flats.get(i), boxes[i])
          || !clear(model.flats.get(i), boxes[i])) {
        return false;
      }
      for (int j = 0; j < i; j++) {
        if (!apart(boxes[j], boxes[i], j, i)) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean insideMargins(Footprint b) {
    Margins m = sheet.margins();
    BigDecimal right = exact(sheet.paper().width().pt()).subtract(exact(m.right().pt()));
    BigDecimal bottom = exact(sheet.paper().height().pt()).subtract(exact(m.bottom().pt()));
    return b.edges()[0].compareTo(exact(m.left().pt())) >= 0
        && b.edges()[1].compareTo(exact(m.top().pt())) >= 0
        && b.edges()[2].compareTo(right) <= 0
        && b.edges()[3].compareTo(bottom) <= 0;
  }

  private boolean insideWindows(Flat flat, Footprint b) {
    GridLines lines = sheet.lines();
    int[] columns = entered(lines.columns(), b, 0);
    int[] rows = entered(lines.rows(), b, 1);
    if (columns[0] < 0 || rows[0] < 0) {
      return false;
    }
    for (int c = columns[0]; c < columns[1]; c++) {
      for (int r = rows[0]; r < rows[1]; r++) {
        if (!isOpen(flat, c, r)) {
          return false;
        }
      }
    }
    return true;
  }

  /** The tracks that the footprint enters, from and to before; -1 if it leaves the grid. */
  private static int[] entered(List<Double> lines, Footprint b, int axis) {
    int from = -1;
    int to = lines.size() - 1;
    for (int k = 0; k < lines.size(); k++) {
      if (compare(b, axis, lines.get(k)) >= 0) {
        from = k;
      }
    }
    while (to > 0 && compare(b, axis + 2, lines.get(to - 1)) <= 0) {
      to--;
    }
    boolean out = compare(b, axis + 2, lines.get(lines.size() - 1)) > 0;
    return out ? new int[] {-1, -1} : new int[] {from, to};
  }

  private static int compare(Footprint b, int edge, double with) {
    double d = b.near()[edge] - with;
    return Math.abs(d) > DOUBT ? (d > 0 ? 1 : -1) : b.edges()[edge].compareTo(exact(with));
  }

  private boolean isOpen(Flat flat, int column, int row) {
    for (SheetWindow w : sheet.windows()) {
      GridArea a = w.area();
      if ((flat.windows().isEmpty() || flat.windows().contains(w.name()))
          && a.columnStart() <= column
          && a.columnEnd() > column
          && a.rowStart() <= row
          && a.rowEnd() > row) {
        return true;
      }
    }
    return false;
  }

  private boolean clear(Flat flat, Footprint b) {
    double clearance = model.request.spacing().clearance(flat.role()).pt();
    for (LabelledCell c : sheet.labelledCells()) {
      if (!clear(b, c.box(), 0, clearance)) {
        return false;
      }
    }
    for (Rule r : sheet.rules()) {
      if (!clear(b, r.axis(), r.width().pt(), clearance)) {
        return false;
      }
    }
    return true;
  }

  private static boolean clear(Footprint b, Rect box, double width, double clearance) {
    double wanted = clearance + width / 2;
    double[] e = b.near();
    double onX = Math.max(box.left() - e[2], e[0] - box.right());
    double onY = Math.max(box.top() - e[3], e[1] - box.bottom());
    double spare = Math.max(onX, onY) - wanted;
    if (Math.abs(spare) > DOUBT) {
      return spare > 0;
    }
    BigDecimal least = exact(clearance).add(exact(width).multiply(new BigDecimal("0.5")));
    BigDecimal[] x = b.edges();
    return exact(box.left()).subtract(x[2]).compareTo(least) >= 0
        || x[0].subtract(exact(box.right())).compareTo(least) >= 0
        || exact(box.top()).subtract(x[3]).compareTo(least) >= 0
        || x[1].subtract(exact(box.bottom())).compareTo(least) >= 0;
  }

  private boolean apart(Footprint a, Footprint b, int i, int j) {
    int options = plan.options()[Model.pair(i, j)];
    double gap = model.gap[i][j];
    return ((options & Model.A_LEFT) != 0 && before(a, b, 0, gap))
        || ((options & Model.B_LEFT) != 0 && before(b, a, 0, gap))
        || ((options & Model.A_ABOVE) != 0 && before(a, b, 1, gap))
        || ((options & Model.B_ABOVE) != 0 && before(b, a, 1, gap));
  }

  private static boolean before(Footprint a, Footprint b, int axis, double gap) {
    double spare = b.near()[axis] - a.near()[axis + 2] - gap;
    return Math.abs(spare) > DOUBT
        ? spare > 0
        : b.edges()[axis].subtract(a.edges()[axis + 2]).compareTo(exact(gap)) >= 0;
  }
}
