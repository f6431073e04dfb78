package dev.placket.layout.solve.order;

import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import java.util.ArrayList;
import java.util.List;

/** Plans in which details that stand in lines share more edges. */
final class SharedEdges {
  private SharedEdges() {}

  /**
   * Across the lines of a block: columns of a grid centred or flush left, rows of unequal length
   * flush left, columns of equal length level row by row. The tidier first.
   */
  static List<PlanLines> across(Model model, Plan plan, DetailBlock block) {
    List<PlanLines> all = new ArrayList<>();
    List<List<Integer>> lines = block.lines();
    if (lines.size() < 2) {
      return all;
    }
    int longest = lines.stream().mapToInt(List::size).max().orElse(0);
    if (block.upright()) {
      all.add(level(model, plan, lines, longest));
      all.add(level(model, plan, lines, 1));
    } else {
      all.add(plumb(model, plan, lines, longest, 0.5));
      all.add(plumb(model, plan, lines, longest, 0));
      all.add(plumb(model, plan, lines, 1, 0));
    }
    return all;
  }

  /** The k-th of each row under the k-th of the row above, for the first so many. */
  private static PlanLines plumb(
      Model model, Plan plan, List<List<Integer>> rows, int count, double anchor) {
    PlanLines its = new PlanLines(model, plan);
    for (int k = 0; k < count; k++) {
      int above = -1;
      for (List<Integer> row : rows) {
        if (k < row.size()) {
          its.anchorX(row.get(k), anchor);
          if (above >= 0) {
            its.plumb(above, row.get(k));
          }
          above = row.get(k);
        }
      }
    }
    return its;
  }

  /** The k-th of each column level with the k-th of the column before, for the first so many. */
  private static PlanLines level(Model model, Plan plan, List<List<Integer>> columns, int count) {
    PlanLines its = new PlanLines(model, plan);
    for (int k = 0; k < count; k++) {
      int before = -1;
      for (List<Integer> column : columns) {
        if (k < column.size()) {
          if (before >= 0) {
            its.level(before, column.get(k));
          }
          before = column.get(k);
        }
      }
    }
    return its;
  }

  /**
   * The last row level with the first view of the same windows; without that, flush left with it.
   */
  static List<PlanLines> withViews(Model model, Plan plan, DetailBlock block) {
    List<PlanLines> all = new ArrayList<>();
    int view = 0;
    int detail = block.lines().get(0).get(0);
    while (view < model.n
        && !(model.flats.get(view).role().isView() && model.sameWindows(view, detail))) {
      view++;
    }
    if (view == model.n) {
      return all;
    }
    List<Integer> last = block.lines().get(block.lines().size() - 1);
    PlanLines level = new PlanLines(model, plan);
    level.level(view, block.upright() ? last.get(last.size() - 1) : last.get(0));
    all.add(level);
    if (!block.upright()) {
      PlanLines flush = new PlanLines(model, plan);
      flush.anchorX(view, 0);
      for (List<Integer> row : block.lines()) {
        flush.anchorX(row.get(0), 0);
        flush.plumb(view, row.get(0));
      }
      all.add(flush);
    }
    return all;
  }
}
