package dev.placket.workbooks.read;

import dev.placket.packs.refusal.Refusal;
import dev.placket.workbooks.geometry.CellRange;
import dev.placket.workbooks.geometry.Emu;
import dev.placket.workbooks.geometry.Grid;
import dev.placket.workbooks.geometry.Tracks;
import dev.placket.workbooks.parts.XmlElement;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads {@code sheetData}: rows, cells and their contents. */
final class Cells {
  /**
   * A cell that shows anything.
   *
   * @param column from 0
   * @param row from 0
   * @param look how it looks
   * @param why what it holds, null for a cell that is only formatted
   * @param text what it shows
   * @param type of its value, as its part names it
   */
  record Cell(
      int column, int row, CellStyles.Look look, Mark.@Nullable Why why, String text, String type) {
    /** Whether it holds text, not a number. */
    boolean isWords() {
      return type.equals("s") || type.equals("str") || type.equals("inlineStr");
    }

    /** Whether it shows that its formula failed. */
    boolean isError() {
      return type.equals("e");
    }
  }

  /** A row or column that is formatted as a whole. */
  record Whole(CellRange range, CellStyles.Look look) {}

  private final CellStyles styles;
  private final List<String> strings;
  private final Tally tally;
  private final List<Cell> cells = new ArrayList<>();
  private final List<Whole> wholes = new ArrayList<>();
  private final Sizes rows;
  private double usual = 15;
  private boolean usuallyHidden;
  private int row = -1;
  private int column = -1;
  private CellStyles.Look look = CellStyles.Look.PLAIN;
  private String type = "n";
  private boolean formula;
  private boolean shows;
  private final StringBuilder text = new StringBuilder();

  Cells(CellStyles styles, List<String> strings, Tally tally, Collection<String> notes) {
    this.rows = new Sizes("rows", notes);
    this.styles = styles;
    this.strings = strings;
    this.tally = tally;
  }

  List<Cell> cells() {
    return cells;
  }

  List<Whole> wholes() {
    return wholes;
  }

  Tracks rows() {
    return rows.tracks(usuallyHidden ? 0 : height(usual), Grid.ROWS);
  }

  /** The height of rows that say nothing of their own. */
  void usualHeight(double points, boolean hidden) {
    usual = points;
    usuallyHidden = hidden;
  }

  /** Far above the greatest height that a row may have, and sums of all rows stay whole numbers. */
  private static final double MOST_POINTS = 1e6;

  private static long height(double points) {
    return Emu.ofPoints(Math.max(0, Math.min(MOST_POINTS, points)));
  }

  void start(XmlElement e) throws Refusal {
    switch (e.name()) {
      case "row" -> row(e);
      case "c" -> cell(e);
      case "f" -> formula = true;
      case "v", "t" -> shows = true;
      case "rPh" -> shows = false;
      default -> {
        // Runs of formatted text: only their t counts.
      }
    }
  }

  void text(String more) {
    if (shows) {
      text.append(more);
    }
  }

  void end(String name) throws Refusal {
    if (name.equals("v") || name.equals("t")) {
      shows = false;
    } else if (name.equals("c")) {
      finish();
    }
  }

  private void row(XmlElement e) throws Refusal {
    tally.one();
    row = e.whole("r", row + 2) - 1;
    column = -1;
    if (row < 0 || row >= Grid.ROWS) {
      throw new IllegalArgumentException("row " + (row + 1));
    }
    rows.add(row, row + 1, e.flag("hidden", false) ? 0 : height(e.number("ht", usual)));
    if (e.flag("customFormat", false)) {
      CellStyles.Look whole = styles.look(e.whole("s", 0));
      wholes.add(new Whole(new CellRange(0, row, Grid.COLUMNS, row + 1), whole));
    }
  }

  private void cell(XmlElement e) throws Refusal {
    tally.one();
    String at = e.get("r");
    if (at == null) {
      column++;
    } else {
      CellRange cell = CellRange.parse(at);
      column = cell.left();
      if (cell.top() != row) {
        throw new IllegalArgumentException("cell " + at + " stands in row " + (row + 1));
      }
    }
    look = styles.look(e.whole("s", 0));
    type = e.get("t", "n");
    formula = false;
    shows = false;
    text.setLength(0);
  }

  private void finish() {
    String shown = type.equals("s") ? shared(text.toString()) : text.toString();
    boolean words = type.equals("s") || type.equals("str") || type.equals("inlineStr");
    Mark.Why why = null;
    if (formula) {
      why = Mark.Why.FORMULA;
    } else if (!shown.isBlank()) {
      why = words ? Mark.Why.TEXT : Mark.Why.NUMBER;
    }
    if (why != null || look.filled() || look.ruled()) {
      // Numbers never run out of their cells.
      CellStyles.Look kept = words || why == null ? look : kept(look);
      cells.add(new Cell(column, row, kept, why, shown, type));
    }
  }

  private static CellStyles.Look kept(CellStyles.Look l) {
    return new CellStyles.Look(
        l.points(),
        l.bold(),
        CellStyles.Align.KEPT,
        l.filled(),
        l.left(),
        l.top(),
        l.right(),
        l.bottom());
  }

  private String shared(String index) {
    int i = index.isBlank() ? -1 : Integer.parseInt(index.strip());
    return i >= 0 && i < strings.size() ? strings.get(i) : "";
  }
}
