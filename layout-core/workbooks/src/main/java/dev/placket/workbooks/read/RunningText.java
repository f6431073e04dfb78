package dev.placket.workbooks.read;

import dev.placket.workbooks.geometry.CellRange;
import dev.placket.workbooks.geometry.Emu;
import dev.placket.workbooks.geometry.Tracks;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds the empty cells that a long text runs into.
 *
 * <p>Letters are counted as wide as digits and a little more, those of ideographic scripts twice as
 * wide: enough for any usual text, since a cell taken for covered costs less than a covered word.
 */
final class RunningText {
  private static final double SLACK = 1.15;
  private static final double BOLD = 1.1;
  private static final int IDEOGRAPHS = 0x2E80;

  private final CellStyles styles;
  private final Tracks columns;

  RunningText(CellStyles styles, Tracks columns) {
    this.styles = styles;
    this.columns = columns;
  }

  /**
   * The cells it runs into.
   *
   * @param before the nearest column to the left where text ends, filled or merged; -1 for none
   * @param after the nearest to the right; the count of columns for none
   */
  List<CellRange> of(Cells.Cell cell, int before, int after) {
    List<CellRange> ranges = new ArrayList<>();
    long over = Math.round(pixels(cell)) * Emu.PER_PIXEL - columns.size(cell.column());
    if (over <= 0 || cell.text().isEmpty()) {
      return ranges;
    }
    CellStyles.Align align = cell.look().align();
    boolean right = align == CellStyles.Align.LEFT || align == CellStyles.Align.CENTRE;
    boolean left = align == CellStyles.Align.RIGHT || align == CellStyles.Align.CENTRE;
    long each = align == CellStyles.Align.CENTRE ? over / 2 : over;
    if (right) {
      int last = columns.at(Math.min(columns.start(cell.column() + 1) + each, end()));
      add(ranges, cell.column() + 1, Math.min(after, last + 1), cell.row());
    }
    if (left && cell.column() > 0) {
      int first = columns.at(Math.max(0, columns.start(cell.column()) - each));
      add(ranges, Math.max(before + 1, first), cell.column(), cell.row());
    }
    return ranges;
  }

  private long end() {
    return columns.start(columns.count()) - 1;
  }

  private static void add(List<CellRange> ranges, int from, int end, int row) {
    if (from < end) {
      ranges.add(new CellRange(from, row, end, row + 1));
    }
  }

  private double pixels(Cells.Cell cell) {
    double digits = cell.text().lines().mapToDouble(RunningText::digits).max().orElse(0);
    double size = cell.look().points() / styles.points() * (cell.look().bold() ? BOLD : 1);
    return digits * styles.digit() * size * SLACK;
  }

  private static double digits(String line) {
    return line.codePoints().mapToDouble(c -> c >= IDEOGRAPHS ? 2 : 1).sum();
  }
}
