package dev.placket.layout.solve.conflict;

import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Relief;
import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.sheet.SheetWindow;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;

/** What of a sheet could give way: labelled cells, in or behind windows, and margins. */
final class SheetCures {
  /** An edge this near the margin has nothing to give: only a strip would come free. */
  private static final double AT_MARGIN = 1;

  private final FitRequest request;
  private final Sheet sheet;
  private final List<Cure> all = new ArrayList<>();

  private SheetCures(FitRequest request) {
    this.request = request;
    this.sheet = request.sheet();
  }

  static List<Cure> of(FitRequest request) {
    SheetCures cures = new SheetCures(request);
    for (MovedLine line : MovedLine.of(request.sheet())) {
      cures.add(
          Relief.Kind.SHORTEN_CELL,
          line.cells(),
          line.edge(),
          line.most(),
          by -> request.withSheet(line.by(by)));
    }
    for (LabelledCell cell : request.sheet().labelledCells()) {
      if (cures.isInWindow(cell.box())) {
        cures.addCell(cell);
      }
    }
    cures.addMargins();
    return cures.all;
  }

  private void add(
      Relief.Kind kind,
      String of,
      Relief.Edge edge,
      double most,
      java.util.function.DoubleFunction<FitRequest> by) {
    if (most > 0) {
      all.add(new Cure(kind, of, edge, most, Relief.Unit.POINT, by));
    }
  }

  private boolean isInWindow(Rect box) {
    for (SheetWindow w : sheet.windows()) {
      if (sheet.box(w).overlaps(box)) {
        return true;
      }
    }
    return false;
  }

  private void addCell(LabelledCell cell) {
    Rect b = cell.box();
    Rect in = sheet.inside();
    for (Relief.Edge edge : Relief.Edge.values()) {
      boolean free =
          switch (edge) {
            case LEFT -> b.left() > in.left() + AT_MARGIN;
            case TOP -> b.top() > in.top() + AT_MARGIN;
            case RIGHT -> b.right() < in.right() - AT_MARGIN;
            case BOTTOM -> b.bottom() < in.bottom() - AT_MARGIN;
          };
      boolean upright = edge == Relief.Edge.LEFT || edge == Relief.Edge.RIGHT;
      if (free) {
        add(
            Relief.Kind.SHORTEN_CELL,
            cell.name(),
            edge,
            upright ? b.width() : b.height(),
            by -> shortened(cell, edge, by));
      }
    }
  }

  private FitRequest shortened(LabelledCell cell, Relief.Edge edge, double by) {
    Rect b = cell.box();
    Rect less =
        switch (edge) {
          case LEFT -> new Rect(Math.min(b.right(), b.left() + by), b.top(), b.right(), b.bottom());
          case TOP -> new Rect(b.left(), Math.min(b.bottom(), b.top() + by), b.right(), b.bottom());
          case RIGHT -> new Rect(b.left(), b.top(), Math.max(b.left(), b.right() - by), b.bottom());
          case BOTTOM -> new Rect(b.left(), b.top(), b.right(), Math.max(b.top(), b.bottom() - by));
        };
    List<LabelledCell> cells =
        sheet.labelledCells().stream()
            .map(c -> c == cell ? new LabelledCell(c.name(), less) : c)
            .toList();
    Sheet changed =
        new Sheet(
            sheet.name(),
            sheet.paper(),
            sheet.margins(),
            sheet.lines(),
            sheet.windows(),
            cells,
            sheet.rules());
    return request.withSheet(changed);
  }

  private void addMargins() {
    Margins m = sheet.margins();
    for (Relief.Edge edge : Relief.Edge.values()) {
      Length its =
          switch (edge) {
            case LEFT -> m.left();
            case TOP -> m.top();
            case RIGHT -> m.right();
            case BOTTOM -> m.bottom();
          };
      add(
          Relief.Kind.NARROW_MARGIN,
          "margin",
          edge,
          its.pt(),
          by -> request.withSheet(narrowed(edge, by)));
    }
  }

  /** The margin narrowed, and with it the grid line that ran along it. */
  private Sheet narrowed(Relief.Edge edge, double by) {
    Margins m = sheet.margins();
    Margins less =
        switch (edge) {
          case LEFT -> new Margins(m.top(), m.right(), m.bottom(), less(m.left(), by));
          case TOP -> new Margins(less(m.top(), by), m.right(), m.bottom(), m.left());
          case RIGHT -> new Margins(m.top(), less(m.right(), by), m.bottom(), m.left());
          case BOTTOM -> new Margins(m.top(), m.right(), less(m.bottom(), by), m.left());
        };
    List<Double> columns = new ArrayList<>(sheet.lines().columns());
    List<Double> rows = new ArrayList<>(sheet.lines().rows());
    Rect in = sheet.inside();
    switch (edge) {
      case LEFT -> move(columns, 0, in.left(), -by);
      case TOP -> move(rows, 0, in.top(), -by);
      case RIGHT -> move(columns, columns.size() - 1, in.right(), by);
      case BOTTOM -> move(rows, rows.size() - 1, in.bottom(), by);
    }
    return new Sheet(
        sheet.name(),
        sheet.paper(),
        less,
        new GridLines(columns, rows),
        sheet.windows(),
        sheet.labelledCells(),
        sheet.rules());
  }

  private static void move(List<Double> lines, int index, double margin, double by) {
    if (Math.abs(lines.get(index) - margin) < 1e-6) {
      lines.set(index, lines.get(index) + by);
    }
  }

  private static Length less(Length length, double by) {
    return Length.pt(Math.max(0, length.pt() - by));
  }
}
