package dev.placket.workbooks.read;

import dev.placket.workbooks.geometry.CellRange;
import dev.placket.workbooks.geometry.Grid;
import dev.placket.workbooks.geometry.Tracks;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Makes marks and rules of cells: merged cells act as one, long texts run on. */
final class Gather {
  private static final int END = Grid.COLUMNS;

  private final CellStyles styles;
  private final Tracks columns;
  private final List<CellRange> merges;
  private final Merges merged;
  private final List<Mark> marks = new ArrayList<>();
  private final Rules rules = new Rules();
  private @Nullable CellRange used;

  Gather(CellStyles styles, Tracks columns, List<CellRange> merges) {
    this.styles = styles;
    this.columns = columns;
    this.merges = merges;
    this.merged = new Merges(merges);
  }

  void cells(Cells cells, List<Cells.Whole> columnLooks) {
    Map<Integer, NavigableSet<Integer>> taken = new HashMap<>();
    List<Cells.Cell> byRow = new ArrayList<>(cells.cells());
    byRow.sort(Comparator.comparingInt(Cells.Cell::row));
    for (Cells.Cell c : byRow) {
      cell(c);
      if (c.why() != null) {
        taken.computeIfAbsent(c.row(), k -> new TreeSet<>()).add(c.column());
      }
    }
    RunningText running = new RunningText(styles, columns);
    for (Cells.Cell c : byRow) {
      boolean text = c.why() == Mark.Why.TEXT || c.why() == Mark.Why.FORMULA;
      if (text && c.look().align() != CellStyles.Align.KEPT && single(c)) {
        NavigableSet<Integer> own = taken.getOrDefault(c.row(), new TreeSet<>());
        Integer before = own.lower(c.column());
        Integer after = own.higher(c.column());
        Integer merge = merged.after(c.column(), c.row());
        running
            .of(
                c,
                Math.max(before == null ? -1 : before, merged.before(c.column(), c.row())),
                Math.min(after == null ? END : after, merge == null ? END : merge))
            .forEach(r -> mark(r, Mark.Why.TEXT_RUNS_IN, ""));
      }
    }
    wholes(cells.wholes());
    wholes(columnLooks);
    merges.forEach(this::uses);
  }

  private boolean single(Cells.Cell c) {
    CellRange m = merged.around(c.column(), c.row());
    return m.right() - m.left() == 1 && m.bottom() - m.top() == 1;
  }

  private void cell(Cells.Cell c) {
    CellRange range = merged.around(c.column(), c.row());
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
      boolean endless = m.range().bottom() == Grid.ROWS;
      boolean wide = m.range().right() == Grid.COLUMNS;
      if (!endless && !wide) {
        whole = whole == null ? m.range() : whole.around(m.range());
      }
    }
    return whole;
  }
}
