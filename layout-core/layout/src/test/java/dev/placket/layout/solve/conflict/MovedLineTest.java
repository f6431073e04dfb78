package dev.placket.layout.solve.conflict;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.sheet.GridArea;
import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Rule;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.sheet.SheetWindow;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** A line that is moved as far as it can stops at the next one, however sums round. */
class MovedLineTest {
  private static final double LEFT = Length.mm(10).pt();
  private static final double RIGHT = PaperSize.A4.landscape().width().pt() - Length.mm(10).pt();

  @Test
  void noLineIsMovedPastTheNext() {
    for (int tenths = 200; tenths < 1200; tenths++) {
      double line = LEFT + Length.mm(tenths / 10.0).pt();
      List<MovedLine> lines = MovedLine.of(beside(line));
      assertFalse(lines.isEmpty());
      for (MovedLine moved : lines) {
        List<Double> columns = moved.by(moved.most()).lines().columns();
        assertTrue(columns.get(1) <= columns.get(2), () -> columns.toString());
      }
    }
  }

  /**
   * Rules run along grid lines over any number of tracks, hidden ones among them, as in a
   * worksheet. A line may run over several of them on its way; none that ended at it is left in the
   * room that comes free, and none turns over.
   */
  @Property(tries = 500)
  void rulesThatEndAtALineLeaveTheRoomItFrees(
      @ForAll @Size(min = 3, max = 6) List<@IntRange(max = 3) Integer> columns,
      @ForAll @Size(min = 3, max = 6) List<@IntRange(max = 3) Integer> rows,
      @ForAll @IntRange(max = 1000) int spot,
      @ForAll @DoubleRange(max = 1) double share) {
    Sheet sheet = ruled(lines(columns, LEFT), lines(rows, 100), spot);
    for (MovedLine line : MovedLine.of(sheet)) {
      double from = at(sheet, line);
      Sheet moved = line.by(share * line.most());
      double to = at(moved, line);
      for (int i = 0; i < sheet.rules().size(); i++) {
        double[] before = along(sheet.rules().get(i).axis(), line);
        double[] after = along(moved.rules().get(i).axis(), line);
        boolean behind = before[line.towardsStart() ? 1 : 0] == from;
        if (behind) {
          boolean clear = line.towardsStart() ? after[1] <= to : after[0] >= to;
          assertTrue(clear, () -> from + " to " + to + ": " + List.of(before[0], before[1]));
        }
      }
    }
  }

  private static double at(Sheet sheet, MovedLine line) {
    GridLines lines = sheet.lines();
    return (line.column() ? lines.columns() : lines.rows()).get(line.index());
  }

  private static double[] along(Rect b, MovedLine line) {
    return line.column() ? new double[] {b.left(), b.right()} : new double[] {b.top(), b.bottom()};
  }

  private static List<Double> lines(List<Integer> tracks, double start) {
    List<Double> lines = new ArrayList<>(List.of(start));
    for (int i = 0; i < tracks.size(); i++) {
      lines.add(lines.get(i) + 15.75 * tracks.get(i));
    }
    return lines;
  }

  /**
   * One space is a window, all to either side of it, above and below one labelled cell each, so
   * that a line has several others to pass; and a rule runs from any line to any.
   */
  private static Sheet ruled(List<Double> columns, List<Double> rows, int spot) {
    GridLines grid = new GridLines(columns, rows);
    int across = columns.size() - 1;
    int down = rows.size() - 1;
    int c = spot % across;
    int r = spot / across % down;
    List<LabelledCell> cells = new ArrayList<>();
    for (int[] a :
        new int[][] {
          {0, 0, c, down}, {c + 1, 0, across, down}, {c, 0, c + 1, r}, {c, r + 1, c + 1, down}
        }) {
      if (a[0] < a[2] && a[1] < a[3]) {
        Rect box = grid.box(new GridArea(a[0], a[1], a[2], a[3]));
        cells.add(new LabelledCell("cell " + cells.size(), box));
      }
    }
    return new Sheet(
        "ruled",
        PaperSize.A4.landscape(),
        Margins.all(Length.mm(10)),
        grid,
        List.of(new SheetWindow("shown", new GridArea(c, r, c + 1, r + 1))),
        cells,
        rules(columns, rows));
  }

  private static List<Rule> rules(List<Double> columns, List<Double> rows) {
    List<Rule> rules = new ArrayList<>();
    for (double x : columns) {
      for (double y : rows) {
        columns.stream().filter(e -> e >= x).forEach(e -> rules.add(rule(x, y, e, y)));
        rows.stream().filter(e -> e >= y).forEach(e -> rules.add(rule(x, y, x, e)));
      }
    }
    return rules;
  }

  private static Rule rule(double left, double top, double right, double bottom) {
    return new Rule(new Rect(left, top, right, bottom), Length.ZERO);
  }

  /** A window, and to its right a labelled cell. */
  private static Sheet beside(double line) {
    return new Sheet(
        "beside",
        PaperSize.A4.landscape(),
        Margins.all(Length.mm(10)),
        new GridLines(List.of(LEFT, line, RIGHT), List.of(100.0, 140.0)),
        List.of(new SheetWindow("shown", new GridArea(0, 0, 1, 1))),
        List.of(new LabelledCell("text", new Rect(line, 100, RIGHT, 140))),
        List.of());
  }
}
