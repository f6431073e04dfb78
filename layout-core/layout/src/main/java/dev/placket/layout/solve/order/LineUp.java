package dev.placket.layout.solve.order;

import dev.placket.layout.fit.OrderStep;
import dev.placket.layout.fit.OrderWish;
import dev.placket.layout.fit.ReadingOrder;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.solve.finish.Balance;
import dev.placket.layout.solve.finish.SpreadOut;
import dev.placket.layout.solve.model.Arrangement;
import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.model.Shapes;
import dev.placket.layout.solve.search.Best;
import dev.placket.layout.solve.search.ProveScale;
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
  private static final long STEPS_IN_ORDER = 4000;

  /** A later candidate has to be better by this share of the scale. */
  private static final double BETTER = 0.01;

  /** A share of the window's width or height. */
  private static final double DRAGGED = 0.02;

  /** With more flats no edges are tied pair by pair: that takes longer than all else. */
  private static final int MANY = 60;

  /** A candidate whose scale is lower than this share of the best is not worth a look. */
  private static final double NEARLY = 0.96;

  /** One that is less tidy as well, by this: growth makes up for some of what tidiness costs. */
  private static final double TIDIER = 0.04;

  /** Flats above one another share their left edges or their middles. */
  private static final double[] ANCHORS = {0, 0.5};

  private final Model model;
  private final double largest;
  private final double floor;
  private final StepCounter steps;
  private final List<OrderStep> taken;
  private final Map<List<Integer>, DetailBlock> blocks = new LinkedHashMap<>();
  private Plan plan;
  private Arrangement arrangement;

  /** No candidate is known to reach more. */
  private double upper;

  /** Whether the order of reading is kept, so that no later wish can lose it. */
  private boolean inOrder;

  /** The candidate last taken. */
  private int chosen;

  /**
   * The wishes of a request, to be granted from a start on.
   *
   * @param start what is kept already
   * @param largest the largest t known, of which prices are parts
   */
  public LineUp(OrderStart start, double largest, BooleanSupplier cancelled) {
    this.model = start.model();
    this.largest = largest;
    this.floor = OrderStart.floor(model, largest);
    this.steps = new StepCounter(STEPS, cancelled);
    this.plan = start.plan();
    this.arrangement = start.arrangement();
    this.upper = start.upper();
    this.taken = new ArrayList<>(start.steps());
  }

  /**
   * Takes the wishes one after the other.
   *
   * @return one or more ways, which differ only in the edges that flats in no line share
   */
  public List<OrderedArrangement> run() {
    for (OrderWish wish : model.request.order().wishes()) {
      if (wish == OrderWish.PARTED) {
        continue; // the start has it
      }
      double before = arrangement.t();
      boolean kept =
          switch (wish) {
            case IN_ORDER -> inOrder = putInOrder();
            case LEVEL_VIEWS -> levelViews();
            case DETAILS_IN_LINE -> lineUpDetails();
            case FEW_EDGES -> shareEdges();
            case BALANCE, PARTED -> false; // balance is a matter of the finished fit
          };
      double price = Math.max(0, (before - arrangement.t()) / largest);
      taken.add(new OrderStep(wish, kept, price));
    }
    return ways();
  }

  private List<OrderedArrangement> ways() {
    OrderedArrangement lined = new OrderedArrangement(plan, arrangement, taken);
    List<OrderedArrangement> ways = new ArrayList<>(List.of(lined));
    if (model.n <= MANY && model.request.order().wishes().contains(OrderWish.FEW_EDGES)) {
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

  /** Flats of one role are read in the order given. */
  private boolean putInOrder() {
    PlanLines lines = new PlanLines(model, plan);
    boolean any = false;
    for (List<Integer> group : listed()) {
      lines.inOrder(group, floor);
      any = true;
    }
    if (!any) {
      return true;
    }
    if (lines.broken()) {
      return false;
    }
    Plan candidate = lines.plan();
    if (Keeps.plan(model, plan, candidate, arrangement)) {
      plan = candidate;
      return true;
    }
    StepCounter own = new StepCounter(STEPS_IN_ORDER, steps.cancelled());
    Best best = new ProveScale(model, candidate, floor, upper, own).run();
    Arrangement found = best.arrangement();
    if (found == null || found.t() < floor) {
      return false;
    }
    plan = candidate;
    arrangement = found;
    upper = Math.min(upper, best.bound());
    return true;
  }

  /** Flats whose order matters, two or more of each. */
  private List<List<Integer>> listed() {
    List<List<Integer>> all = new ArrayList<>();
    for (int i = 0; i < model.n; i++) {
      Flat its = model.flats.get(i);
      List<Integer> mine = null;
      for (List<Integer> group : all) {
        mine = ReadingOrder.matters(model.flats.get(group.get(0)), its) ? group : mine;
      }
      if (mine != null) {
        mine.add(i);
      } else if (!its.role().isView()) {
        all.add(new ArrayList<>(List.of(i)));
      }
    }
    all.removeIf(g -> g.size() < 2);
    return all;
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
      boolean lined = !inOrder && lineUp(group, rows(blocks), List.of(Place.RIGHT, Place.UNDER));
      lined = lined || lineUp(group, blocks, List.of(Place.RIGHT, Place.UNDER));
      lined = lined || (!views(group).isEmpty() && lineUp(group, blocks, List.of(Place.AFTER)));
      lined = lined || (!views(group).isEmpty() && lineUp(group, blocks, List.of(Place.ANY)));
      if (!lined) {
        var unused = putAfterViews(group);
      }
      all &= lined;
    }
    return all;
  }

  /**
   * Rows are read in their order; of several columns the second begins above the end of the first.
   */
  private static List<DetailBlock> rows(List<DetailBlock> blocks) {
    return blocks.stream().filter(b -> !b.upright() || b.lines().size() == 1).toList();
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
    boolean lined = takeRoomiest(plans, c -> untidy(candidates.get(c)));
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
    return areAlike(group, width, height)
        ? List.of(DetailBlock.grid(group, columns(group)))
        : DetailBlock.of(group, width, height);
  }

  /** Whether all flats are in the group and have one size: their largest arrangement is a grid. */
  private boolean areAlike(List<Integer> group, double[] width, double[] height) {
    int first = group.get(0);
    return group.size() == model.n
        && group.stream().allMatch(i -> width[i] == width[first] && height[i] == height[first]);
  }

  /** How many stand level with the first. */
  private int columns(List<Integer> group) {
    double y = arrangement.y()[group.get(0)];
    double near = model.span * 1e-9;
    return (int) group.stream().filter(i -> Math.abs(arrangement.y()[i] - y) <= near).count();
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
      if (lines.broken() || wanted > upper) {
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
    return take(bestPlan, best);
  }

  /**
   * The candidate in which views, then the other flats, can be enlarged most within its order.
   *
   * @param better by which share a candidate has to better those before it
   */
  private boolean takeRoomiest(List<PlanLines> candidates, IntToDoubleFunction better) {
    Plan bestPlan = null;
    Arrangement best = null;
    GrowthRoom most = null;
    for (int c = 0; c < candidates.size(); c++) {
      PlanLines lines = candidates.get(c);
      double wanted = best == null ? floor : Math.max(floor, best.t() * NEARLY);
      if (lines.broken() || wanted > upper) {
        continue;
      }
      Plan candidate = lines.plan();
      Arrangement found = solve(candidate, wanted);
      if (found == null) {
        continue;
      }
      GrowthRoom room = GrowthRoom.of(model, candidate, found);
      double by = Math.min(better.applyAsDouble(c), TIDIER);
      if (most == null || room.exceeds(most, by)) {
        best = found;
        bestPlan = candidate;
        most = room;
        chosen = c;
      }
    }
    return take(bestPlan, best);
  }

  private boolean take(@Nullable Plan its, @Nullable Arrangement found) {
    if (its == null || found == null) {
      return false;
    }
    plan = its;
    arrangement = found;
    upper = found.t();
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
    Best best = new Best(new StretchOrder(model, candidate), wanted, upper);
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
