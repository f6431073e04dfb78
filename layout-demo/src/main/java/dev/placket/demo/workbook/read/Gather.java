package dev.placket.demo.workbook.read;

import dev.placket.demo.workbook.geometry.CellRange;
import dev.placket.demo.workbook.geometry.Tracks;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Makes marks and rules of cells: merged cells act as one, long texts run on. */
final class Gather {
  private final Styles styles;
  private final Tracks columns;
  private final List<CellRange> merges;
  private final Map<Integer, List<CellRange>> mergesOfRow = new HashMap<>();
  private final List<Mark> marks = new ArrayList<>();
  private final Rules rules = new Rules();
  private @Nullable CellRange used;

  Gather(Styles styles, Tracks columns, List<CellRange> merges) {
    this.styles = styles;
    this.columns = columns;
    this.merges = merges;
    for (CellRange m : merges) {
      // A merge of very many rows is looked for without the index.
      for (int r = m.top(); r < Math.min(m.bottom(), m.top() + 2000); r++) {
        mergesOfRow.computeIfAbsent(r, k -> new ArrayList<>()).add(m);
      }
    }
  }

  void cells(Cells cells, List<Cells.Whole> columnLooks) {
    Map<Integer, SortedSet<Integer>> taken = new TreeMap<>();
    for (Cells.Cell c : cells.cells()) {
      cell(c);
      if (c.why() != null) {
        taken.computeIfAbsent(c.row(), k -> new TreeSet<>()).add(c.column());
      }
    }
    RunningText running = new RunningText(styles, columns);
    for (Cells.Cell c : cells.cells()) {
      boolean text = c.why() == Mark.Why.TEXT || c.why() == Mark.Why.FORMULA;
      if (text && c.look().align() != Styles.Align.KEPT && single(c)) {
        SortedSet<Integer> stops = new TreeSet<>(taken.get(c.row()));
        for (CellRange m : mergesOfRow.getOrDefault(c.row(), List.of())) {
          stops.add(m.left());
          stops.add(m.right() - 1);
        }
        running.of(c, stops).forEach(r -> mark(r, Mark.Why.TEXT_RUNS_IN, ""));
      }
    }
    wholes(cells.wholes());
    wholes(columnLooks);
    merges.forEach(this::uses);
  }

  private boolean single(Cells.Cell c) {
    CellRange m = merged(c.column(), c.row());
    return m.right() - m.left() == 1 && m.bottom() - m.top() == 1;
  }

  private void cell(Cells.Cell c) {
    CellRange range = merged(c.column(), c.row());
    if (c.why() != null) {
      mark(range, c.why(), c.text());
    } else if (c.look().filled()) {
      mark(range, Mark.Why.FILL, "");
    }
    if (c.look().ruled()) {
      rules.cell(c.column(), c.row(), c.look(), range);
      uses(range);
    }
  }

  private void wholes(List<Cells.Whole> wholes) {
    for (Cells.Whole w : wholes) {
      if (w.look().filled()) {
        marks.add(new Mark(w.range(), Mark.Why.FILL, ""));
      }
      if (w.look().ruled()) {
        rules.whole(w.range(), w.look());
      }
    }
  }

  private void mark(CellRange range, Mark.Why why, String text) {
    marks.add(new Mark(range, why, text));
    uses(range);
  }

  private void uses(CellRange range) {
    used = used == null ? range : used.around(range);
  }

  private CellRange merged(int column, int row) {
    CellRange cell = CellRange.cell(column, row);
    for (CellRange m : mergesOfRow.getOrDefault(row, List.of())) {
      if (m.contains(cell)) {
        return m;
      }
    }
    return cell;
  }

  List<Mark> marks() {
    return marks;
  }

  List<RuleLine> rules() {
    return rules.lines();
  }

  /** The cells that hold or show anything, marks of other parts counted. */
  @Nullable CellRange used(List<Mark> all) {
    CellRange whole = used;
    for (Mark m : all) {
      boolean endless = m.range().bottom() == dev.placket.demo.workbook.geometry.Grid.ROWS;
      boolean wide = m.range().right() == dev.placket.demo.workbook.geometry.Grid.COLUMNS;
      if (!endless && !wide) {
        whole = whole == null ? m.range() : whole.around(m.range());
      }
    }
    return whole;
  }
}
