package dev.placket.workbooks.read;

import dev.placket.workbooks.geometry.CellRange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Gathers the rules of single cells into the lines they draw. */
final class Rules {
  private record Edge(boolean level, int line, int at) {}

  private static final Comparator<Edge> ORDER =
      Comparator.comparing(Edge::level).thenComparingInt(Edge::line).thenComparingInt(Edge::at);

  private final Map<Edge, Double> edges = new TreeMap<>(ORDER);
  private final List<RuleLine> whole = new ArrayList<>();

  /** The rules of one cell; inside merged cells only those along the outside show. */
  void cell(int column, int row, CellStyles.Look look, CellRange merged) {
    if (column == merged.left()) {
      put(false, column, row, look.left());
    }
    if (column + 1 == merged.right()) {
      put(false, column + 1, row, look.right());
    }
    if (row == merged.top()) {
      put(true, row, column, look.top());
    }
    if (row + 1 == merged.bottom()) {
      put(true, row + 1, column, look.bottom());
    }
  }

  /** The rules of a row or column that is formatted as a whole. */
  void whole(CellRange r, CellStyles.Look look) {
    if (r.bottom() == r.top() + 1) {
      add(new RuleLine(true, r.top(), r.left(), r.right(), look.top()));
      add(new RuleLine(true, r.bottom(), r.left(), r.right(), look.bottom()));
    } else {
      for (int c = r.left(); c < r.right() && c < r.left() + 256; c++) {
        add(new RuleLine(false, c, r.top(), r.bottom(), look.left()));
        add(new RuleLine(false, c + 1, r.top(), r.bottom(), look.right()));
      }
    }
  }

  private void add(RuleLine line) {
    if (line.pixels() > 0) {
      whole.add(line);
    }
  }

  private void put(boolean level, int line, int at, double pixels) {
    if (pixels > 0) {
      edges.merge(new Edge(level, line, at), pixels, Math::max);
    }
  }

  /** Lines of one width, as long as they run on. */
  List<RuleLine> lines() {
    List<RuleLine> lines = new ArrayList<>(whole);
    RuleLine open = null;
    for (Map.Entry<Edge, Double> edge : edges.entrySet()) {
      Edge e = edge.getKey();
      double pixels = edge.getValue();
      if (open != null
          && open.level() == e.level
          && open.line() == e.line
          && open.end() == e.at
          && open.pixels() == pixels) {
        open = new RuleLine(e.level, e.line, open.from(), e.at + 1, pixels);
        lines.set(lines.size() - 1, open);
      } else {
        open = new RuleLine(e.level, e.line, e.at, e.at + 1, pixels);
        lines.add(open);
      }
    }
    return lines;
  }
}
