package dev.placket.layout.solve.order;

import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.OrderStep;
import dev.placket.layout.fit.OrderWish;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.solve.finish.Balance;
import dev.placket.layout.solve.finish.SpreadOut;
import dev.placket.layout.solve.model.Arrangement;
import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.model.Shapes;
import dev.placket.layout.solve.search.Best;
import dev.placket.layout.solve.search.SearchOrders;
import dev.placket.layout.solve.search.StepCounter;
import dev.placket.layout.solve.stretch.StretchOrder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Gives up some of the largest scale for order: views level, details in rows and columns, few
 * edges.
 *
 * <p>Each wish is a few candidate plans with equalities between anchors; the search that proves the
 * largest scale finds the largest scale of each, and the best is taken if the share allows it.
 */
public final class LineUp {
  private static final long STEPS_PER_PLAN = 1000;
  private static final long STEPS = 20_000;

  /** A later candidate has to be better by this share of the scale. */
  private static final double BETTER = 0.01;

  /** A share of the window's width or height. */
  private static final double DRAGGED = 0.02;

  /** One that is less tidy as well, by this: growth makes up for some of what tidiness costs. */
  private static final double TIDIER = 0.04;

  /** Flats above one another share their left edges or their middles. */
  private static final double[] ANCHORS = {0, 0.5};

  private final Model model;
  private final double largest;
  private final double floor;
  private final StepCounter steps;
  private final List<OrderStep> taken = new ArrayList<>();
  private final Map<List<Integer>, DetailBlock> blocks = new LinkedHashMap<>();
  private Plan plan;
  private Arrangement arrangement;

  /** The candidate last taken. */
  private int chosen;

  /** The wishes of a model's request, to be granted from the largest arrangement on. */
  public LineUp(Model model, Arrangement largest, BooleanSupplier cancelled) {
    this.model = model;
    Order order = model.request.order();
    this.largest = largest.t();
    this.floor = Math.max(model.low, largest.t() * (1 - order.share()));
    this.steps = new StepCounter(STEPS, cancelled);
    this.plan = Plan.free(model).withOptions(model.options);
    this.arrangement = largest;
  }

  /**
   * Takes the wishes one after the other.
   *
   * @return one or more ways, which differ only in the edges that flats in no line share
   */
  public List<OrderedArrangement> run() {
    for (OrderWish wish : model.request.order().wishes()) {
      double before = arrangement.t();
      boolean kept =
          switch (wish) {
            case LEVEL_VIEWS -> levelViews();
            case DETAILS_IN_LINE -> lineUpDetails();
            case FEW_EDGES -> shareEdges();
            case BALANCE -> false; // a matter of the finished fit: Balance tells
          };
      double price = Math.max(0, (before - arrangement.t()) / largest);
      taken.add(new OrderStep(wish, kept, price));
    }
    return ways();
  }

  private List<OrderedArrangement> ways() {
    OrderedArrangement lined = new OrderedArrangement(plan, arrangement, taken);
    List<OrderedArrangement> ways = new ArrayList<>(List.of(lined));
    if (model.request.order().wishes().contains(OrderWish.FEW_EDGES)) {
      boolean[] loose = new boolean[model.n];
      Arrays.fill(loose, true);
      blocks.keySet().forEach(g -> g.forEach(i -> loose[i] = false));
      for (double anchor : ANCHORS) {
        OrderedArrangement near =
            new NearEdges(model, lined, anchor, loose, floor, steps).run(largest);
        if (near != null) {
          ways.add(near);
        }
      }
    }
    return ways;
  }

  /** The steps of the search that the wishes have taken. */
  public long stepsTaken() {
    return steps.taken();
  }

  /**
   * All views of the same windows side by side, level on the heights they name; where that is too
   * dear for three or more, in two such rows.
   */
  private boolean levelViews() {
    boolean all = true;
    for (List<Integer> row : groups(true)) {
      boolean level = takeFirst(viewRows(row));
      all &= level;
    }
    return all;
  }

  private List<PlanLines> viewRows(List<Integer> views) {
    List<PlanLines> rows = new ArrayList<>();
    for (int first = views.size(); first >= 2; first--) {
      PlanLines lines = new PlanLines(model, plan);
      for (int i : views) {
        Flat f = model.flats.get(i);
        lines.anchorY(i, (f.levelHeight() - f.ink().top()) / f.ink().height());
      }
      List<Integer> upper = views.subList(0, first);
      List<Integer> lower = views.subList(first, views.size());
      lines.row(upper);
      lines.row(lower);
      upper.forEach(u -> lower.forEach(l -> lines.allow(u, l, Model.A_ABOVE)));
      rows.add(lines);
    }
    return rows;
  }

  /**
   * The details of each window in rows or columns, in the order given: right of all views or under
   * them, else each after the views in one way or the other, else anywhere; in no line, but after
   * the views, where all of that is too dear.
   */
  private boolean lineUpDetails() {
    boolean all = true;
    for (List<Integer> group : groups(false)) {
      List<DetailBlock> blocks = blocks(group);
      boolean lined = lineUp(group, blocks, List.of(Place.RIGHT, Place.UNDER));
      lined = lined || (!views(group).isEmpty() && lineUp(group, blocks, List.of(Place.AFTER)));
      lined = lined || (!views(group).isEmpty() && lineUp(group, blocks, List.of(Place.ANY)));
      if (!lined) {
        var unused = putAfterViews(group);
      }
      all &= lined;
    }
    return all;
  }

  /** In no line, yet the views come first. */
  private boolean putAfterViews(List<Integer> group) {
    PlanLines lines = new PlanLines(model, plan);
    views(group).forEach(v -> group.forEach(d -> lines.precede(v, d, true, true)));
    return !views(group).isEmpty() && takeFirst(List.of(lines));
  }

  /** Where details stand to the views of their windows. */
  private enum Place {
    RIGHT,
    UNDER,
    AFTER,
    ANY
  }

  private boolean lineUp(List<Integer> group, List<DetailBlock> blocks, List<Place> places) {
    List<Integer> views = views(group);
    List<DetailBlock> candidates = new ArrayList<>();
    List<PlanLines> plans = new ArrayList<>();
    for (DetailBlock block : blocks) {
      for (Place place : views.isEmpty() ? places.subList(0, 1) : places) {
        if (place == Place.ANY && untidy(block) > BETTER) {
          continue; // a short row of its own, far from the others, reads worse than no rows
        }
        PlanLines lines = new PlanLines(model, plan);
        lines.block(block);
        if (place != Place.ANY) {
          boolean left = place != Place.UNDER;
          boolean above = place != Place.RIGHT;
          views.forEach(v -> group.forEach(d -> lines.precede(v, d, left, above)));
        }
        candidates.add(block);
        plans.add(lines);
      }
    }
    boolean lined = takeBest(plans, c -> untidy(candidates.get(c)));
    if (lined) {
      this.blocks.put(group, candidates.get(chosen));
    }
    return lined;
  }

  private List<DetailBlock> blocks(List<Integer> group) {
    Shapes s = new Shapes(model, plan.anchorX(), plan.anchorY()).at(arrangement.t());
    double[] width = new double[model.n];
    double[] height = new double[model.n];
    for (int i : group) {
      width[i] = s.width(i) + model.gap[i][i];
      height[i] = s.height(i) + model.gap[i][i];
    }
    return DetailBlock.of(group, width, height);
  }

  /** The views that use the same windows. */
  private List<Integer> views(List<Integer> group) {
    List<Integer> views = new ArrayList<>();
    for (int i = 0; i < model.n; i++) {
      Flat f = model.flats.get(i);
      if (f.role().isView() && model.sameWindows(i, group.get(0))) {
        views.add(i);
      }
    }
    return views;
  }

  /** How much better than the best so far a candidate has to be. */
  private static double untidy(DetailBlock block) {
    return block.isGrid() && !block.upright() ? BETTER : TIDIER;
  }

  /** The first candidate that the share allows. */
  private boolean takeFirst(List<PlanLines> candidates) {
    return takeBest(candidates, c -> Double.POSITIVE_INFINITY);
  }

  /**
   * The candidate that costs least; false if all cost too much.
   *
   * @param better by which share of the scale a candidate has to better those before it
   */
  private boolean takeBest(List<PlanLines> candidates, IntToDoubleFunction better) {
    Plan bestPlan = null;
    Arrangement best = null;
    for (int c = 0; c < candidates.size(); c++) {
      PlanLines lines = candidates.get(c);
      double wanted =
          best == null ? floor : Math.max(floor, best.t() * (1 + better.applyAsDouble(c)));
      if (lines.broken() || wanted > arrangement.t()) {
        continue;
      }
      Plan candidate = lines.plan();
      Arrangement found = solve(candidate, wanted);
      if (found != null) {
        best = found;
        bestPlan = candidate;
        chosen = c;
      }
    }
    if (best == null || bestPlan == null) {
      return false;
    }
    plan = bestPlan;
    arrangement = best;
    return true;
  }

  /** Details in line share edges across their lines, and their last row the level of the views. */
  private boolean shareEdges() {
    boolean all = true;
    for (Map.Entry<List<Integer>, DetailBlock> e : blocks.entrySet()) {
      boolean shared = takeFirst(SharedEdges.across(model, plan, e.getValue()));
      all &= shared || e.getValue().lines().size() == 1;
    }
    for (DetailBlock block : blocks.values()) {
      shareWithViews(block);
    }
    return all && blocks.size() == groups(false).size();
  }

  /** A line with the views is not worth that these are dragged to an edge of the window. */
  private void shareWithViews(DetailBlock block) {
    Plan planBefore = plan;
    Arrangement before = arrangement;
    double off = off();
    if (takeFirst(SharedEdges.withViews(model, plan, block)) && off() > off + DRAGGED) {
      plan = planBefore;
      arrangement = before;
    }
  }

  /** How far off the middle the ink is once all is spread. */
  private double off() {
    Arrangement spread = new SpreadOut(model, plan, arrangement).at(arrangement.t());
    return Balance.off(model, spread == null ? arrangement : spread, plan);
  }

  private @Nullable Arrangement solve(Plan candidate, double wanted) {
    Best best = new Best(new StretchOrder(model, candidate), wanted, arrangement.t());
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
      if (model.sameWindows(g.get(0), i)) {
        g.add(i);
        return;
      }
    }
    groups.add(new ArrayList<>(List.of(i)));
  }
}
