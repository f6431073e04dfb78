package dev.placket.layout.fit;

import dev.placket.layout.flat.Flat;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Gives up some of the largest scale for order: views level, details in rows and columns.
 *
 * <p>Each wish is a few candidate plans with equalities between anchors; the search that proves the
 * largest scale finds the largest scale of each, and the best is taken if the share allows it.
 */
final class LineUp {
  private static final long STEPS_PER_PLAN = 1500;

  /** A later candidate has to be better by this share of the scale. */
  private static final double BETTER = 0.002;

  private final Model model;
  private final double largest;
  private final double floor;
  private final Steps steps;
  private final List<OrderStep> taken = new ArrayList<>();
  private Plan plan;
  private Arrangement arrangement;

  LineUp(Model model, Arrangement largest, BooleanSupplier cancelled) {
    this.model = model;
    Order order = model.request.order();
    this.largest = largest.t();
    this.floor = Math.max(model.low, largest.t() * (1 - order.share()));
    this.steps = new Steps(40 * STEPS_PER_PLAN, cancelled);
    this.plan = Plan.free(model).withOptions(model.options);
    this.arrangement = largest;
  }

  /** Takes the wishes one after the other. */
  LineUp run() {
    for (OrderWish wish : model.request.order().wishes()) {
      double before = arrangement.t();
      boolean kept =
          switch (wish) {
            case LEVEL_VIEWS -> levelViews();
            case DETAILS_IN_LINE -> lineUpDetails(false);
            case FEW_EDGES -> lineUpDetails(true);
            case BALANCE -> false; // nothing balances yet
          };
      double price = kept ? Math.max(0, (before - arrangement.t()) / largest) : 0;
      taken.add(new OrderStep(wish, kept, price));
    }
    return this;
  }

  Plan plan() {
    return plan;
  }

  Arrangement arrangement() {
    return arrangement;
  }

  List<OrderStep> steps() {
    return taken;
  }

  long stepsTaken() {
    return steps.taken();
  }

  /** All views of the same windows side by side, level on the heights they name. */
  private boolean levelViews() {
    Lines lines = new Lines(plan);
    for (List<Integer> row : groups(true)) {
      for (int i : row) {
        Flat f = model.flats.get(i);
        lines.anchorY(i, (f.levelHeight() - f.ink().top()) / f.ink().height());
      }
      lines.row(row, false);
    }
    return lines.none() || take(lines.plan());
  }

  /** The details of each window in a grid, in the order given. */
  private boolean lineUpDetails(boolean columnsToo) {
    boolean all = true;
    for (List<Integer> group : groups(false)) {
      all &= lineUp(group, columnsToo);
    }
    return all;
  }

  private boolean lineUp(List<Integer> group, boolean columnsToo) {
    Plan bestPlan = null;
    Arrangement best = null;
    for (int columns = 1; columns <= group.size(); columns++) {
      Lines lines = new Lines(plan);
      lines.grid(group, columns, columnsToo);
      Plan candidate = lines.plan();
      double wanted = best == null ? floor : Math.max(floor, best.t() * (1 + BETTER));
      Arrangement found = lines.broken ? null : solve(candidate, wanted);
      if (found != null) {
        best = found;
        bestPlan = candidate;
      }
    }
    if (best == null || bestPlan == null) {
      return false;
    }
    plan = bestPlan;
    arrangement = best;
    return true;
  }

  private boolean take(Plan candidate) {
    Arrangement found = solve(candidate, floor);
    if (found == null) {
      return false;
    }
    plan = candidate;
    arrangement = found;
    return true;
  }

  private @Nullable Arrangement solve(Plan candidate, double wanted) {
    Best best = new Best(new StretchOrder(model, candidate), wanted, largest);
    var unused = new SearchOrders(model, candidate, best, steps).run(wanted, STEPS_PER_PLAN);
    return best.arrangement();
  }

  /** Views, or all others, by the windows they use: two or more of each. */
  private List<List<Integer>> groups(boolean views) {
    List<List<Integer>> groups = new ArrayList<>();
    for (int i = 0; i < model.n; i++) {
      if (model.flats.get(i).role().isView() == views) {
        addTo(groups, i);
      }
    }
    groups.removeIf(g -> g.size() < 2);
    return groups;
  }

  private void addTo(List<List<Integer>> groups, int i) {
    for (List<Integer> g : groups) {
      if (model.flats.get(g.get(0)).windows().equals(model.flats.get(i).windows())) {
        g.add(i);
        return;
      }
    }
    groups.add(new ArrayList<>(List.of(i)));
  }

  /** A plan in the making. */
  private final class Lines {
    private final double[] x;
    private final double[] y;
    private final List<int[]> tiesX;
    private final List<int[]> tiesY;
    private final byte[] options;
    private boolean broken;

    Lines(Plan from) {
      x = from.anchorX().clone();
      y = from.anchorY().clone();
      tiesX = new ArrayList<>(Arrays.asList(from.tiesX()));
      tiesY = new ArrayList<>(Arrays.asList(from.tiesY()));
      options = from.options().clone();
    }

    boolean none() {
      return tiesX.isEmpty() && tiesY.isEmpty() && !broken;
    }

    void anchorY(int i, double share) {
      broken |= model.flats.get(i).held().top() != null;
      y[i] = share;
    }

    /** Side by side and level; in the order given or in any. */
    void row(List<Integer> row, boolean inOrder) {
      for (int k = 1; k < row.size(); k++) {
        tie(tiesY, row.get(k - 1), row.get(k));
        for (int j = 0; j < k; j++) {
          int any = inOrder ? Model.A_LEFT : Model.A_LEFT | Model.B_LEFT;
          allow(row.get(j), row.get(k), any);
        }
      }
    }

    /** Rows of so many columns under one another; the columns centred on one line where asked. */
    void grid(List<Integer> group, int columns, boolean centred) {
      for (int k = 0; k < group.size(); k++) {
        anchorY(group.get(k), 1);
        for (int j = 0; j < k; j++) {
          boolean sameRow = j / columns == k / columns;
          allow(group.get(j), group.get(k), sameRow ? Model.A_LEFT : Model.A_ABOVE);
        }
        if (k % columns > 0) {
          tie(tiesY, group.get(k - 1), group.get(k));
        }
        if (centred && k >= columns) {
          broken |= model.flats.get(group.get(k)).held().left() != null;
          broken |= model.flats.get(group.get(k - columns)).held().left() != null;
          tie(tiesX, group.get(k - columns), group.get(k));
        }
      }
    }

    private void tie(List<int[]> ties, int a, int b) {
      if (ties.stream().noneMatch(t -> t[0] == a && t[1] == b)) {
        ties.add(new int[] {a, b});
      }
    }

    private void allow(int a, int b, int these) {
      int at = Model.pair(a, b);
      options[at] &= (byte) these;
      broken |= options[at] == 0;
    }

    Plan plan() {
      int[][] none = new int[0][];
      byte[] its = broken ? new byte[options.length] : options;
      return new Plan(x, y, tiesX.toArray(none), tiesY.toArray(none), its, none);
    }
  }
}
