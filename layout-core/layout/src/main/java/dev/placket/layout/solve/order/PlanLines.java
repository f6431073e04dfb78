package dev.placket.layout.solve.order;

import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.model.Shapes;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A plan in the making: equalities between anchors and options taken away, on top of another plan.
 */
final class PlanLines {
  private final Model model;
  private final double[] x;
  private final double[] y;
  private final List<int[]> tiesX;
  private final List<int[]> tiesY;
  private final byte[] options;
  private final List<Plan.Reads> reads;
  private boolean broken;

  PlanLines(Model model, Plan from) {
    this.model = model;
    x = from.anchorX().clone();
    y = from.anchorY().clone();
    tiesX = new ArrayList<>(Arrays.asList(from.tiesX()));
    tiesY = new ArrayList<>(Arrays.asList(from.tiesY()));
    options = from.options().clone();
    reads = new ArrayList<>(Arrays.asList(from.reads()));
  }

  /** Whether a demand contradicts what is held or what the plan says already. */
  boolean broken() {
    return broken;
  }

  /** Anchors a flat at a share of its ink's height. */
  void anchorY(int i, double share) {
    broken |= y[i] != share && (model.flats.get(i).held().top() != null || isTied(tiesY, i));
    y[i] = share;
  }

  /** Anchors a flat at a share of its ink's width. */
  void anchorX(int i, double share) {
    broken |= x[i] != share && (model.flats.get(i).held().left() != null || isTied(tiesX, i));
    x[i] = share;
  }

  private static boolean isTied(List<int[]> ties, int i) {
    return ties.stream().anyMatch(t -> t[0] == i || t[1] == i);
  }

  /** The anchors of two flats share their y. */
  void level(int a, int b) {
    tie(tiesY, a, b);
  }

  /** The anchors of two flats share their x. */
  void plumb(int a, int b) {
    tie(tiesX, a, b);
  }

  private static void tie(List<int[]> ties, int a, int b) {
    if (ties.stream().noneMatch(t -> t[0] == a && t[1] == b)) {
      ties.add(new int[] {a, b});
    }
  }

  /** The pair, a before b in the request, may do nothing but these. */
  void allow(int a, int b, int these) {
    int at = Model.pair(a, b);
    options[at] &= (byte) these;
    broken |= options[at] == 0;
  }

  /** The first of two stands left of the second, or above it, as far as each is allowed. */
  void precede(int a, int b, boolean left, boolean above) {
    int these = (left ? Model.A_LEFT : 0) | (above ? Model.A_ABOVE : 0);
    if (a < b) {
      allow(a, b, these);
    } else {
      allow(b, a, these << 1);
    }
  }

  /**
   * Each stands before the next ones as text is read.
   *
   * @param from no scale below this is searched
   */
  void inOrder(List<Integer> row, double from) {
    for (int k = 1; k < row.size(); k++) {
      for (int j = 0; j < k; j++) {
        int first = row.get(j);
        int second = row.get(k);
        precede(first, second, true, true);
        reads.removeIf(r -> r.first() == first && r.second() == second);
        reads.add(new Plan.Reads(first, second, 0, from));
      }
    }
  }

  /** Side by side and level, in any order. */
  void row(List<Integer> row) {
    for (int k = 1; k < row.size(); k++) {
      level(row.get(k - 1), row.get(k));
      for (int j = 0; j < k; j++) {
        allow(row.get(j), row.get(k), Model.A_LEFT | Model.B_LEFT);
      }
    }
  }

  /** Rows level on the ink's bottoms, or columns centred, in the order given. */
  void block(DetailBlock block) {
    int along = block.upright() ? Model.A_ABOVE : Model.A_LEFT;
    int across = block.upright() ? Model.A_LEFT : Model.A_ABOVE;
    for (int l = 0; l < block.lines().size(); l++) {
      List<Integer> line = block.lines().get(l);
      for (int k = 0; k < line.size(); k++) {
        int i = line.get(k);
        anchorY(i, 1);
        if (block.upright() && model.flats.get(i).held().left() == null) {
          anchorX(i, 0.5);
        }
        for (int j = 0; j < k; j++) {
          allow(line.get(j), i, along);
        }
        for (int before = 0; before < l; before++) {
          block.lines().get(before).forEach(b -> allow(b, i, across));
        }
        if (k > 0 && block.upright()) {
          plumb(line.get(k - 1), i);
        } else if (k > 0) {
          level(line.get(k - 1), i);
        }
      }
    }
  }

  Plan plan() {
    int[][] none = new int[0][];
    Plan.Reads[] all = reads.toArray(new Plan.Reads[0]);
    Shapes least = new Shapes(model, x, y);
    for (int k = 0; k < all.length; k++) {
      boolean another = k == 0 || all[k].from() != all[k - 1].from();
      all[k] = all[k].about(another ? least.at(all[k].from()) : least);
    }
    return new Plan(x, y, tiesX.toArray(none), tiesY.toArray(none), options, none, all);
  }
}
