package dev.placket.layout.fit;

import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.Rule;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.sheet.Window;
import dev.placket.layout.units.Box;
import java.util.ArrayList;
import java.util.List;

/**
 * A grid line that may move away from a window, at the cost of the labelled cells behind it.
 *
 * @param sheet the sheet as it is
 * @param column whether it is an upright line
 * @param index which of the grid's columns or rows
 * @param towardsStart whether it moves left or up, rather than right or down
 */
record MovedLine(Sheet sheet, boolean column, int index, boolean towardsStart) {
  private static final double SAME = 1e-6;

  /**
   * Every line that borders a window on one side and labelled cells on the other, in the order of
   * the grid.
   */
  static List<MovedLine> of(Sheet sheet) {
    List<MovedLine> all = new ArrayList<>();
    for (boolean column : new boolean[] {true, false}) {
      int count = (column ? sheet.lines().columns() : sheet.lines().rows()).size();
      for (int i = 0; i < count; i++) {
        for (boolean towardsStart : new boolean[] {true, false}) {
          MovedLine line = new MovedLine(sheet, column, i, towardsStart);
          if (line.bordersWindow() && !line.behind().isEmpty()) {
            all.add(line);
          }
        }
      }
    }
    return all;
  }

  /** The names of the cells that would be shortened, as one phrase. */
  String cells() {
    return String.join(", ", behind().stream().map(LabelledCell::name).toList());
  }

  /** Which edge of the cells moves inwards. */
  Relief.Edge edge() {
    return column
        ? towardsStart ? Relief.Edge.RIGHT : Relief.Edge.LEFT
        : towardsStart ? Relief.Edge.BOTTOM : Relief.Edge.TOP;
  }

  /**
   * The most by which the line can move, in points: the least of the cells behind it would then
   * have no room, or the line would pass the next one.
   */
  double most() {
    return behind().stream()
        .mapToDouble(c -> column ? c.box().width() : c.box().height())
        .map(room -> Math.min(room, Math.abs(next() - at())))
        .min()
        .orElse(0);
  }

  /** The line that this one would come to; far off where there is none. */
  private double next() {
    List<Double> lines = column ? sheet.lines().columns() : sheet.lines().rows();
    int next = towardsStart ? index - 1 : index + 1;
    if (next < 0 || next == lines.size()) {
      return towardsStart ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
    }
    return lines.get(next);
  }

  /** The sheet with the line moved by the points given, from 0 to {@link #most()}. */
  Sheet by(double points) {
    double from = at();
    // A sum may round to just past the next line.
    double to = towardsStart ? Math.max(from - points, next()) : Math.min(from + points, next());
    List<Double> moved = new ArrayList<>(column ? sheet.lines().columns() : sheet.lines().rows());
    moved.set(index, to);
    GridLines lines =
        column
            ? new GridLines(moved, sheet.lines().rows())
            : new GridLines(sheet.lines().columns(), moved);
    List<LabelledCell> cells =
        sheet.labelledCells().stream()
            .map(c -> new LabelledCell(c.name(), shifted(c.box(), from, to)))
            .toList();
    List<Rule> rules =
        sheet.rules().stream().map(r -> new Rule(shifted(r.axis(), from, to), r.width())).toList();
    Margins margins = sheet.margins();
    return new Sheet(sheet.name(), sheet.paper(), margins, lines, sheet.windows(), cells, rules);
  }

  private double at() {
    return (column ? sheet.lines().columns() : sheet.lines().rows()).get(index);
  }

  private boolean bordersWindow() {
    for (Window w : sheet.windows()) {
      int start = column ? w.area().columnStart() : w.area().rowStart();
      int end = column ? w.area().columnEnd() : w.area().rowEnd();
      if (index == (towardsStart ? start : end)) {
        return true;
      }
    }
    return false;
  }

  private List<LabelledCell> behind() {
    return sheet.labelledCells().stream().filter(c -> touches(c.box())).toList();
  }

  private boolean touches(Box b) {
    double edge =
        column ? (towardsStart ? b.right() : b.left()) : (towardsStart ? b.bottom() : b.top());
    return Math.abs(edge - at()) < SAME;
  }

  private Box shifted(Box b, double from, double to) {
    return column
        ? new Box(moved(b.left(), from, to), b.top(), moved(b.right(), from, to), b.bottom())
        : new Box(b.left(), moved(b.top(), from, to), b.right(), moved(b.bottom(), from, to));
  }

  private static double moved(double edge, double from, double to) {
    return Math.abs(edge - from) < SAME ? to : edge;
  }
}
