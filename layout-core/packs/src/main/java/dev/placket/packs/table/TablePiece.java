package dev.placket.packs.table;

import dev.placket.layout.sheet.Rule;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import dev.placket.packs.text.Cell;
import dev.placket.packs.text.TableRow;
import dev.placket.packs.text.TextRun;
import java.util.ArrayList;
import java.util.List;

/**
 * Some rows of a table on one sheet, under their headings.
 *
 * @param cells its text as labelled cells, windows left out
 * @param rules the lines between its columns and rows
 * @param tints what is laid under the column of the sample size
 * @param blacks what is laid under values in white
 * @param windows the windows of its rows
 * @param rows where its rows lie
 */
public record TablePiece(
    List<Cell> cells,
    List<Rule> rules,
    List<Rect> tints,
    List<Rect> blacks,
    List<RowWindow> windows,
    List<TableRow> rows) {
  /** Without rows. */
  public static final TablePiece NONE =
      new TablePiece(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

  /** The width of lines between rows and columns. */
  public static final Length LINE = Length.mm(0.18);

  /** From a rule to what is laid under a value in white, so that two of them stay apart. */
  private static final Length LIGHT = Length.mm(0.4);

  /**
   * A window in a row.
   *
   * @param flat the flat that it is for
   * @param box where it lies, in points on the sheet
   */
  public record RowWindow(String flat, Rect box) {}

  /** Copies the lists. */
  public TablePiece {
    cells = List.copyOf(cells);
    rules = List.copyOf(rules);
    tints = List.copyOf(tints);
    blacks = List.copyOf(blacks);
    windows = List.copyOf(windows);
    rows = List.copyOf(rows);
  }

  /**
   * The rows from one up to another, not included.
   *
   * @param name what the labelled cells are called
   * @param area where the table lies; it begins at the top left
   */
  public static TablePiece of(TableLayout laid, int from, int to, String name, Rect area) {
    return new Builder(laid, from, to, name, area).build();
  }

  private static final class Builder {
    private final TableLayout laid;
    private final int from;
    private final String name;
    private final Rect area;
    private final List<Double> tops = new ArrayList<>();
    private final List<Double> edges = new ArrayList<>();
    private final List<Cell> cells = new ArrayList<>();

    Builder(TableLayout laid, int from, int to, String name, Rect area) {
      this.laid = laid;
      this.from = from;
      this.name = name;
      this.area = area;
      laid.edges().forEach(e -> edges.add(area.left() + e));
      boolean full = Math.abs(edges.get(edges.size() - 1) - area.right()) < 1e-6;
      if (full) {
        edges.set(edges.size() - 1, area.right());
      }
      tops.add(area.top());
      tops.add(area.top() + laid.headingHeight());
      for (int r = from; r < to; r++) {
        double bottom = tops.get(tops.size() - 1) + laid.rowHeight(r);
        tops.add(Math.abs(bottom - area.bottom()) < 1e-6 ? area.bottom() : bottom);
      }
    }

    TablePiece build() {
      List<Rect> tints = new ArrayList<>();
      int columns = edges.size() - 1;
      int begin = 0;
      for (int c = 0; c < columns; c++) {
        if (laid.table().columns().get(c).strong()) {
          tints.add(new Rect(edges.get(c), tops.get(0), edges.get(c + 1), bottom()));
        }
        if (laid.table().columns().get(c).windows()) {
          text(begin, c);
          heading(c);
          begin = c + 1;
        }
      }
      text(begin, columns);
      return new TablePiece(cells, rules(), tints, blacks(), windows(), rows());
    }

    private double bottom() {
      return tops.get(tops.size() - 1);
    }

    private void heading(int c) {
      Rect box = new Rect(edges.get(c), tops.get(0), edges.get(c + 1), tops.get(1));
      cells.add(new Cell(named(), box, laid.headingRuns(c, area.left(), tops.get(0))));
    }

    private void text(int begin, int end) {
      if (begin == end) {
        return;
      }
      List<TextRun> runs = new ArrayList<>();
      for (int c = begin; c < end; c++) {
        runs.addAll(laid.headingRuns(c, area.left(), tops.get(0)));
      }
      for (int i = 1; i < tops.size() - 1; i++) {
        for (int c = begin; c < end; c++) {
          runs.addAll(laid.valueRuns(from + i - 1, c, area.left(), tops.get(i)));
        }
      }
      cells.add(
          new Cell(
              named(), new Rect(edges.get(begin), tops.get(0), edges.get(end), bottom()), runs));
    }

    private String named() {
      return cells.isEmpty() ? name : name + " " + (cells.size() + 1);
    }

    private List<Rule> rules() {
      List<Rule> rules = new ArrayList<>();
      double right = edges.get(edges.size() - 1);
      for (double x : edges.subList(1, edges.size())) {
        if (x < area.right()) {
          rules.add(new Rule(new Rect(x, area.top(), x, bottom()), LINE));
        }
      }
      for (double y : tops.subList(1, tops.size())) {
        if (y < area.bottom()) {
          rules.add(new Rule(new Rect(area.left(), y, right, y), LINE));
        }
      }
      return rules;
    }

    private List<Rect> blacks() {
      List<Rect> blacks = new ArrayList<>();
      for (int i = 1; i < tops.size() - 1; i++) {
        for (int c = 0; c < edges.size() - 1; c++) {
          if (laid.isReversed(from + i - 1, c)) {
            blacks.add(
                new Rect(
                    edges.get(c) + LIGHT.pt(),
                    tops.get(i) + LIGHT.pt(),
                    edges.get(c + 1) - LIGHT.pt(),
                    tops.get(i + 1) - LIGHT.pt()));
          }
        }
      }
      return blacks;
    }

    private List<TableRow> rows() {
      List<TableRow> rows = new ArrayList<>();
      for (int i = 1; i < tops.size() - 1; i++) {
        List<Rect> boxes = new ArrayList<>();
        for (int c = 0; c < edges.size() - 1; c++) {
          boxes.add(new Rect(edges.get(c), tops.get(i), edges.get(c + 1), tops.get(i + 1)));
        }
        rows.add(new TableRow(name, from + i - 1, boxes));
      }
      return rows;
    }

    private List<RowWindow> windows() {
      List<RowWindow> windows = new ArrayList<>();
      for (int i = 1; i < tops.size() - 1; i++) {
        List<String> row = laid.table().rows().get(from + i - 1);
        for (int c = 0; c < row.size(); c++) {
          if (laid.table().columns().get(c).windows() && !row.get(c).isBlank()) {
            Rect box = new Rect(edges.get(c), tops.get(i), edges.get(c + 1), tops.get(i + 1));
            windows.add(new RowWindow(row.get(c).strip(), box));
          }
        }
      }
      return windows;
    }
  }
}
