package dev.placket.layout.solve.model;

import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.sheet.GridArea;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Rule;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.sheet.SheetWindow;
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds the room a flat may use: windows joined where they share a grid line, less labelled cells
 * and rules with their clearance.
 *
 * <p>All edges are sorted into one list for x and one for y, where every grid line keeps its own
 * place even if two lie on the same spot; so windows join by line, never by equal doubles.
 */
final class FindSpace {
  private final Sheet sheet;
  private final List<GridArea> windows = new ArrayList<>();
  private final List<double[]> obstacles = new ArrayList<>();
  private final Axis columns;
  private final Axis rows;

  /** The sorted edges of one axis, and where grid lines and obstacles landed among them. */
  private static final class Axis {
    private record Edge(double at, int line, int obstacle, boolean far) {}

    final double[] at;
    final int[] line;
    final int[] near;
    final int[] far;

    Axis(List<Double> lines, boolean[] used, List<double[]> obstacles, int axis) {
      List<Edge> edges = new ArrayList<>();
      for (int i = 0; i < used.length; i++) {
        if (used[i]) {
          edges.add(new Edge(lines.get(i), i, -1, false));
        }
      }
      for (int o = 0; o < obstacles.size(); o++) {
        edges.add(new Edge(obstacles.get(o)[axis], -1, o, false));
        edges.add(new Edge(obstacles.get(o)[axis + 2], -1, o, true));
      }
      edges.sort(Comparator.comparingDouble(Edge::at));
      at = new double[edges.size()];
      line = new int[lines.size()];
      near = new int[obstacles.size()];
      far = new int[obstacles.size()];
      for (int i = 0; i < at.length; i++) {
        Edge e = edges.get(i);
        at[i] = e.at;
        if (e.line >= 0) {
          line[e.line] = i;
        } else if (e.far) {
          far[e.obstacle] = i;
        } else {
          near[e.obstacle] = i;
        }
      }
    }
  }

  private FindSpace(Sheet sheet, Flat flat, Spacing spacing) {
    this.sheet = sheet;
    boolean[] usedColumns = new boolean[sheet.lines().columns().size()];
    boolean[] usedRows = new boolean[sheet.lines().rows().size()];
    for (SheetWindow w : sheet.windows()) {
      if (flat.windows().isEmpty() || flat.windows().contains(w.name())) {
        GridArea a = w.area();
        windows.add(a);
        usedColumns[a.columnStart()] = true;
        usedColumns[a.columnEnd()] = true;
        usedRows[a.rowStart()] = true;
        usedRows[a.rowEnd()] = true;
      }
    }
    double clearance = spacing.clearance(flat.role()).pt();
    for (LabelledCell c : sheet.labelledCells()) {
      addObstacle(c.box(), clearance);
    }
    for (Rule r : sheet.rules()) {
      addObstacle(r.ink(), clearance);
    }
    columns = new Axis(sheet.lines().columns(), usedColumns, obstacles, 0);
    rows = new Axis(sheet.lines().rows(), usedRows, obstacles, 1);
  }

  /** The room for a flat; without any where all its windows are covered. */
  static Space of(Sheet sheet, Flat flat, Spacing spacing) {
    return new FindSpace(sheet, flat, spacing).find();
  }

  private void addObstacle(Rect box, double clearance) {
    Rect b = box.grown(clearance);
    for (GridArea a : windows) {
      Rect w = sheet.lines().box(a);
      boolean meets =
          b.left() < w.right()
              && b.right() > w.left()
              && b.top() < w.bottom()
              && b.bottom() > w.top();
      if (meets) {
        obstacles.add(new double[] {b.left(), b.top(), b.right(), b.bottom()});
        return;
      }
    }
  }

  private Space find() {
    int width = Math.max(0, columns.at.length - 1);
    int height = Math.max(0, rows.at.length - 1);
    boolean[][] closed = new boolean[width][height];
    for (boolean[] column : closed) {
      java.util.Arrays.fill(column, true);
    }
    for (GridArea a : windows) {
      paint(
          closed,
          columns.line[a.columnStart()],
          rows.line[a.rowStart()],
          columns.line[a.columnEnd()],
          rows.line[a.rowEnd()],
          false);
    }
    List<double[]> walls = new ArrayList<>(cover(closed));
    for (int o = 0; o < obstacles.size(); o++) {
      paint(closed, columns.near[o], rows.near[o], columns.far[o], rows.far[o], true);
      walls.add(obstacles.get(o));
    }
    return space(walls, rooms(closed));
  }

  private static void paint(
      boolean[][] cells, int left, int top, int right, int bottom, boolean with) {
    for (int c = left; c < right; c++) {
      for (int r = top; r < bottom; r++) {
        cells[c][r] = with;
      }
    }
  }

  private Space space(List<double[]> walls, List<double[]> rooms) {
    double left = Double.POSITIVE_INFINITY;
    double top = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double bottom = Double.NEGATIVE_INFINITY;
    for (double[] r : rooms) {
      left = Math.min(left, r[0]);
      top = Math.min(top, r[1]);
      right = Math.max(right, r[2]);
      bottom = Math.max(bottom, r[3]);
    }
    List<double[]> inside = new ArrayList<>();
    for (double[] w : walls) {
      if (w[0] < right && w[2] > left && w[1] < bottom && w[3] > top && !covered(w, walls)) {
        inside.add(w);
      }
    }
    return new Space(
        left, top, right, bottom, inside.toArray(new double[0][]), rooms.toArray(new double[0][]));
  }

  /** Whether another wall, or an earlier one that is the same, makes this one superfluous. */
  private static boolean covered(double[] w, List<double[]> walls) {
    boolean before = true;
    for (double[] o : walls) {
      if (o == w) {
        before = false;
      } else if (o[0] <= w[0] && o[1] <= w[1] && o[2] >= w[2] && o[3] >= w[3]) {
        if (before || !(w[0] <= o[0] && w[1] <= o[1] && w[2] >= o[2] && w[3] >= o[3])) {
          return true;
        }
      }
    }
    return false;
  }

  /** Covers what is closed by rectangles, each run down as far as it goes and then to the right. */
  private List<double[]> cover(boolean[][] closed) {
    List<double[]> cover = new ArrayList<>();
    boolean[][] done = new boolean[closed.length][rows.at.length];
    for (int c = 0; c < closed.length; c++) {
      for (int r = 0; r < closed[c].length; r++) {
        if (closed[c][r] && !done[c][r]) {
          int bottom = r;
          while (bottom < closed[c].length && closed[c][bottom] && !done[c][bottom]) {
            bottom++;
          }
          int right = c + 1;
          while (right < closed.length && full(closed[right], r, bottom)) {
            right++;
          }
          paint(done, c, r, right, bottom, true);
          cover.add(new double[] {columns.at[c], rows.at[r], columns.at[right], rows.at[bottom]});
        }
      }
    }
    return cover;
  }

  private static boolean full(boolean[] column, int from, int to) {
    for (int r = from; r < to; r++) {
      if (!column[r]) {
        return false;
      }
    }
    return true;
  }

  /** All maximal empty rectangles with an area. O(columns² × rows). */
  private List<double[]> rooms(boolean[][] closed) {
    List<double[]> rooms = new ArrayList<>();
    for (int c = 0; c < closed.length; c++) {
      boolean[] blocked = new boolean[closed[c].length];
      for (int d = c; d < closed.length; d++) {
        for (int r = 0; r < blocked.length; r++) {
          blocked[r] |= closed[d][r];
        }
        addRuns(closed, blocked, c, d + 1, rooms);
      }
    }
    return rooms;
  }

  private void addRuns(
      boolean[][] closed, boolean[] blocked, int left, int right, List<double[]> rooms) {
    int r = 0;
    while (r < blocked.length) {
      int top = r;
      while (r < blocked.length && !blocked[r]) {
        r++;
      }
      boolean wider =
          (left > 0 && open(closed[left - 1], top, r))
              || (right < closed.length && open(closed[right], top, r));
      boolean hasArea =
          r > top && columns.at[right] > columns.at[left] && rows.at[r] > rows.at[top];
      if (hasArea && !wider) {
        rooms.add(new double[] {columns.at[left], rows.at[top], columns.at[right], rows.at[r]});
      }
      r = Math.max(r, top) + 1;
    }
  }

  private static boolean open(boolean[] column, int from, int to) {
    for (int r = from; r < to; r++) {
      if (column[r]) {
        return false;
      }
    }
    return true;
  }
}
