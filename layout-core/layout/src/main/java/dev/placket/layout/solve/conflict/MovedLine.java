package dev.placket.layout.solve.conflict;

import dev.placket.layout.fit.Relief;
import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.Rule;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.sheet.SheetWindow;
import dev.placket.layout.units.Rect;
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
          if (line.freesRoom()) {
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
   * have no room, or the line would run into the edge of another window.
   */
  double most() {
    return Math.abs(at() - stop());
  }

  /** Where the line can move no further. */
  private double stop() {
    double stop = towardsStart ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
    for (LabelledCell c : behind()) {
      Rect b = c.box();
      stop = nearer(stop, column ? (towardsStart ? b.left() : b.right()) : far(b));
    }
    for (SheetWindow w : sheet.windows()) {
      for (int edge : new int[] {start(w), end(w)}) {
        boolean ahead = towardsStart ? edge < index : edge > index;
        stop = ahead ? nearer(stop, at(edge)) : stop;
      }
    }
    return stop;
  }

  private double far(Rect b) {
    return towardsStart ? b.top() : b.bottom();
  }

  private double nearer(double one, double other) {
    return towardsStart ? Math.max(one, other) : Math.min(one, other);
  }

  /** The sheet with the line moved by the points given, from 0 to {@link #most()}. */
  Sheet by(double points) {
    double from = at();
    // A sum may round to just past the stop.
    double to = nearer(stop(), towardsStart ? from - points : from + points);
    // Lines that no window ends at are pushed along.
    List<Double> moved = new ArrayList<>(all());
    for (int i = 0; i < moved.size(); i++) {
      boolean ahead = towardsStart ? i <= index : i >= index;
      double its = moved.get(i);
      moved.set(i, !ahead ? its : towardsStart ? Math.min(its, to) : Math.max(its, to));
    }
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

  private List<Double> all() {
    return column ? sheet.lines().columns() : sheet.lines().rows();
  }

  private double at(int line) {
    return all().get(line);
  }

  private double at() {
    return at(index);
  }

  private int start(SheetWindow w) {
    return column ? w.area().columnStart() : w.area().rowStart();
  }

  private int end(SheetWindow w) {
    return column ? w.area().columnEnd() : w.area().rowEnd();
  }

  /** Whether a window begins here, with a labelled cell right behind the line. */
  private boolean freesRoom() {
    for (SheetWindow w : sheet.windows()) {
      boolean borders = index == (towardsStart ? start(w) : end(w));
      if (borders && behind().stream().anyMatch(c -> beside(c.box(), sheet.box(w)))) {
        return true;
      }
    }
    return false;
  }

  private boolean beside(Rect cell, Rect window) {
    return column
        ? cell.top() < window.bottom() - SAME && cell.bottom() > window.top() + SAME
        : cell.left() < window.right() - SAME && cell.right() > window.left() + SAME;
  }

  private List<LabelledCell> behind() {
    return sheet.labelledCells().stream().filter(c -> touches(c.box())).toList();
  }

  private boolean touches(Rect b) {
    double edge =
        column ? (towardsStart ? b.right() : b.left()) : (towardsStart ? b.bottom() : b.top());
    return Math.abs(edge - at()) < SAME;
  }

  private Rect shifted(Rect b, double from, double to) {
    double[] x = {b.left(), b.right()};
    double[] y = {b.top(), b.bottom()};
    double[] along = column ? x : y;
    if (touches(along[0], from) || touches(along[1], from)) {
      along[0] = swept(along[0], from, to);
      along[1] = swept(along[1], from, to);
    }
    return new Rect(x[0], y[0], x[1], y[1]);
  }

  /** An edge that the line runs over on its way moves along with it, or a box would turn over. */
  private double swept(double edge, double from, double to) {
    boolean passed = towardsStart ? edge >= to && edge <= from : edge <= to && edge >= from;
    return passed || touches(edge, from) ? to : edge;
  }

  private static boolean touches(double edge, double from) {
    return Math.abs(edge - from) < SAME;
  }
}
