package dev.placket.workbooks.room;

import dev.placket.layout.sheet.GridArea;
import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Rule;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.sheet.SheetWindow;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import dev.placket.workbooks.geometry.CellRange;
import dev.placket.workbooks.geometry.Emu;
import dev.placket.workbooks.geometry.Grid;
import dev.placket.workbooks.geometry.PrintPage;
import dev.placket.workbooks.geometry.PrintSetup;
import dev.placket.workbooks.read.Mark;
import dev.placket.workbooks.read.RuleLine;
import dev.placket.workbooks.read.Worksheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Turns a printed page of a worksheet into a sheet with windows, labelled cells and rules. */
public final class FindRoom {
  /**
   * A page that would take more than some seconds has no room to speak of: it holds something in
   * each of more than a thousand rows.
   */
  private static final double MOST_STEPS = 2e9;

  private final Worksheet worksheet;
  private final Grid narrow;
  private final List<Mark> marks;
  private final Wanted wanted;

  /**
   * For the pages of a worksheet.
   *
   * @param tolerance by how many pixels programs may differ in the size of a column or row
   * @param own how the names of pictures begin that will be replaced, and so cover nothing
   * @param wanted what a description says
   */
  public FindRoom(Worksheet worksheet, int tolerance, String own, Wanted wanted) {
    this.worksheet = worksheet;
    this.narrow = worksheet.grid().changed(-tolerance);
    this.wanted = wanted;
    this.marks = new ArrayList<>(worksheet.marks());
    Occupied occupied = new Occupied(narrow, worksheet.grid().changed(tolerance));
    worksheet.things().stream()
        .filter(t -> !t.name().startsWith(own))
        .forEach(t -> marks.add(new Mark(occupied.cells(t), Mark.Why.DRAWN_ON, t.name())));
    wanted.labelled().forEach(r -> marks.add(new Mark(r, Mark.Why.NAMED, "")));
  }

  /** All that stays uncovered. */
  public List<Mark> marks() {
    return List.copyOf(marks);
  }

  /**
   * The room of a page.
   *
   * @return null where the page has none that a flat could use, its cells are wider than the paper,
   *     or it holds too much to look for blanks among it
   */
  public @Nullable PageRoom of(PrintPage page) {
    List<Mark> here = marks.stream().filter(m -> m.range().meets(page.cells())).toList();
    List<RuleLine> rules = worksheet.rules();
    GridCuts columns = GridCuts.of(stops(here, rules, true), page, narrow.columns(), true);
    GridCuts rows = GridCuts.of(stops(here, rules, false), page, narrow.rows(), false);
    if (!fits(page, columns, rows) || steps(columns, rows) > MOST_STEPS) {
      return null;
    }
    Map<String, CellRange> named = wanted.windows();
    List<GridArea> blank = new ArrayList<>();
    List<GridArea> windows = new ArrayList<>();
    for (List<CellRange> together : rooms(named)) {
      BlankSpaces ground = ground(here, rules, page, columns, rows);
      if (!together.isEmpty()) {
        boolean[][] open = new boolean[columns.spaces()][rows.spaces()];
        together.stream()
            .filter(w -> w.meets(page.cells()))
            .forEach(w -> open(open, area(w, columns, rows)));
        ground.coverAllBut(open);
      }
      List<GridArea> its = ground.windows(wanted.least(), wanted.leastHeight());
      if (!its.isEmpty()) {
        blank.addAll(its);
        windows.addAll(new Windows(ground, columns, rows).apart(its));
      }
    }
    if (blank.isEmpty()) {
      return null;
    }
    List<GridArea> covered = ground(here, rules, page, columns, rows).coveredAreas();
    Sheet sheet =
        new Sheet(
            worksheet.name(),
            worksheet.setup().paper(),
            worksheet.setup().margins(),
            new GridLines(columns.places(), rows.places()),
            named(windows, named, columns, rows),
            labelled(covered, columns, rows),
            rules(page, columns, rows));
    return new PageRoom(
        page, narrow, sheet, here, blank.stream().map(a -> cells(a, columns, rows)).toList());
  }

  /** Ranges that act as one room: all of them, or each alone where they are boxes. */
  private List<List<CellRange>> rooms(Map<String, CellRange> named) {
    return wanted.boxes()
        ? named.values().stream().map(List::of).toList()
        : List.of(List.copyOf(named.values()));
  }

  private BlankSpaces ground(
      List<Mark> here, List<RuleLine> rules, PrintPage page, GridCuts columns, GridCuts rows) {
    BlankSpaces ground = new BlankSpaces(columns, rows);
    here.forEach(m -> ground.cover(area(m.range(), columns, rows)));
    rules.forEach(r -> rule(ground, r, page, columns, rows));
    return ground;
  }

  /** What looking for windows takes: see {@link BlankSpaces#windows}. */
  private static double steps(GridCuts columns, GridCuts rows) {
    return (double) rows.spaces() * rows.spaces() * columns.spaces();
  }

  private boolean fits(PrintPage page, GridCuts columns, GridCuts rows) {
    PrintSetup setup = worksheet.setup();
    double right = setup.paper().width().pt() - setup.margins().right().pt();
    double bottom = setup.paper().height().pt() - setup.margins().bottom().pt();
    return columns.place(columns.spaces()) <= right + 1e-7
        && rows.place(rows.spaces()) <= bottom + 1e-7
        && page.cells().right() > page.cells().left();
  }

  private NavigableSet<Integer> stops(List<Mark> here, List<RuleLine> rules, boolean columns) {
    TreeSet<Integer> stops = new TreeSet<>();
    for (Mark m : here) {
      stops.add(columns ? m.range().left() : m.range().top());
      stops.add(columns ? m.range().right() : m.range().bottom());
    }
    for (RuleLine r : rules) {
      if (r.level() == columns) {
        stops.add(r.from());
        stops.add(r.end());
      } else {
        stops.add(r.line());
      }
    }
    for (CellRange w : wanted.windows().values()) {
      stops.add(columns ? w.left() : w.top());
      stops.add(columns ? w.right() : w.bottom());
    }
    return stops;
  }

  private static void open(boolean[][] open, GridArea a) {
    for (int c = a.columnStart(); c < a.columnEnd(); c++) {
      java.util.Arrays.fill(open[c], a.rowStart(), a.rowEnd(), true);
    }
  }

  private static GridArea area(CellRange range, GridCuts columns, GridCuts rows) {
    int left = columns.line(range.left());
    int top = rows.line(range.top());
    return new GridArea(
        left,
        top,
        Math.max(left + 1, columns.line(range.right())),
        Math.max(top + 1, rows.line(range.bottom())));
  }

  private static CellRange cells(GridArea a, GridCuts columns, GridCuts rows) {
    return new CellRange(
        columns.track(a.columnStart()),
        rows.track(a.rowStart()),
        columns.track(a.columnEnd()),
        rows.track(a.rowEnd()));
  }

  private static void rule(
      BlankSpaces ground, RuleLine r, PrintPage page, GridCuts columns, GridCuts rows) {
    int first = r.level() ? page.cells().left() : page.cells().top();
    int end = r.level() ? page.cells().right() : page.cells().bottom();
    int low = r.level() ? page.cells().top() : page.cells().left();
    int high = r.level() ? page.cells().bottom() : page.cells().right();
    if (r.from() >= end || r.end() <= first || r.line() < low || r.line() > high) {
      return;
    }
    if (r.level()) {
      ground.ruleLevel(rows.line(r.line()), columns.line(r.from()), columns.line(r.end()));
    } else {
      ground.ruleUpright(columns.line(r.line()), rows.line(r.from()), rows.line(r.end()));
    }
  }

  private static List<SheetWindow> named(
      List<GridArea> windows, Map<String, CellRange> names, GridCuts columns, GridCuts rows) {
    List<SheetWindow> list = new ArrayList<>();
    for (GridArea a : windows) {
      CellRange cells = cells(a, columns, rows);
      String name =
          names.entrySet().stream()
              .filter(n -> n.getValue().contains(cells))
              .map(Map.Entry::getKey)
              .findFirst()
              .orElse("");
      list.add(new SheetWindow(name.isEmpty() ? cells.toString() : name + " " + cells, a));
    }
    return list;
  }

  private static List<LabelledCell> labelled(
      List<GridArea> covered, GridCuts columns, GridCuts rows) {
    List<LabelledCell> list = new ArrayList<>();
    for (GridArea a : covered) {
      Rect box =
          new Rect(
              columns.place(a.columnStart()),
              rows.place(a.rowStart()),
              columns.place(a.columnEnd()),
              rows.place(a.rowEnd()));
      if (box.width() > 0 && box.height() > 0) {
        list.add(new LabelledCell(cells(a, columns, rows).toString(), box));
      }
    }
    return list;
  }

  private List<Rule> rules(PrintPage page, GridCuts columns, GridCuts rows) {
    List<Rule> list = new ArrayList<>();
    double points = (double) Emu.PER_PIXEL / Emu.PER_POINT * page.percent() / 100;
    for (RuleLine r : worksheet.rules()) {
      GridCuts along = r.level() ? columns : rows;
      GridCuts across = r.level() ? rows : columns;
      int line = across.line(r.line());
      double from = along.place(along.line(r.from()));
      double to = along.place(along.line(r.end()));
      if (across.track(line) == r.line() && to > from) {
        double at = across.place(line);
        Rect axis = r.level() ? new Rect(from, at, to, at) : new Rect(at, from, at, to);
        list.add(new Rule(axis, Length.pt(r.pixels() * points)));
      }
    }
    return list;
  }
}
