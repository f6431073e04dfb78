package dev.placket.layout.solve.order;

import dev.placket.layout.fit.OrderStep;
import dev.placket.layout.fit.OrderWish;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.solve.finish.SpreadOut;
import dev.placket.layout.solve.model.Arrangement;
import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.model.Shapes;
import dev.placket.layout.solve.search.Best;
import dev.placket.layout.solve.search.SearchOrders;
import dev.placket.layout.solve.search.StepCounter;
import dev.placket.layout.solve.stretch.PairRelations;
import dev.placket.layout.solve.stretch.StretchOrder;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Lets flats that stand in no line share edges one by one: beside one another the ink's bottoms,
 * one above the other the left edges or the middles, those that nearly agree first.
 *
 * <p>The relative order stays as it is found, so each line costs one look at it.
 */
final class NearEdges {
  /** What one line may cost, as a share of the scale. */
  private static final double PRICE = 0.03;

  private static final double BOTTOM = 1;

  private final Model model;
  private final OrderedArrangement from;
  private final double anchorX;
  private final boolean[] loose;
  private final double floor;
  private final StepCounter steps;
  private final byte[] sides;
  private Plan plan;
  private Arrangement arrangement;

  /**
   * Starts from an arrangement and what it keeps.
   *
   * @param anchorX which edge flats above one another share: 0 the left, 0.5 the middle
   * @param loose the flats that stand in no line
   * @param floor no t below this is wanted
   */
  NearEdges(
      Model model,
      OrderedArrangement from,
      double anchorX,
      boolean[] loose,
      double floor,
      StepCounter steps) {
    this.model = model;
    this.anchorX = anchorX;
    this.loose = loose;
    this.floor = floor;
    this.steps = steps;
    this.from = from;
    this.arrangement = from.arrangement();
    Shapes shapes = new Shapes(model, from.plan().anchorX(), from.plan().anchorY());
    this.sides =
        PairRelations.of(model, from.plan(), shapes.at(arrangement.t()), arrangement).sides();
    this.plan = from.plan().withOptions(sides);
  }

  /** Two flats, the first before the second in the request, and how far their edges are apart. */
  private record Pair(int a, int b, boolean onX, double apart) {}

  /**
   * The plan with the lines that the scale pays for, or null if there are none. O(n²) looks.
   *
   * @param largest the t of which prices are parts
   */
  @Nullable OrderedArrangement run(double largest) {
    double before = arrangement.t();
    boolean any = false;
    for (Pair pair : pairs()) {
      any |= share(pair);
    }
    if (!any) {
      return null;
    }
    double price = Math.max(0, (before - arrangement.t()) / largest);
    List<OrderStep> all =
        from.steps().stream()
            .map(
                s ->
                    s.wish() == OrderWish.FEW_EDGES
                        ? new OrderStep(s.wish(), true, s.price() + price)
                        : s)
            .toList();
    return new OrderedArrangement(plan, arrangement, all);
  }

  private boolean share(Pair pair) {
    PlanLines lines = new PlanLines(model, plan);
    if (pair.onX()) {
      lines.anchorX(pair.a(), anchorX);
      lines.anchorX(pair.b(), anchorX);
      lines.plumb(pair.a(), pair.b());
    } else {
      lines.anchorY(pair.a(), BOTTOM);
      lines.anchorY(pair.b(), BOTTOM);
      lines.level(pair.a(), pair.b());
    }
    int[][] ties = pair.onX() ? plan.tiesX() : plan.tiesY();
    if (lines.broken() || connected(ties, pair)) {
      return false;
    }
    Plan candidate = lines.plan();
    double wanted = Math.max(floor, arrangement.t() * (1 - PRICE));
    Best best = new Best(new StretchOrder(model, candidate), wanted, arrangement.t());
    var unused = new SearchOrders(model, candidate, best, steps).run(wanted, 1L + model.n);
    Arrangement found = best.arrangement();
    if (found == null) {
      return false;
    }
    plan = candidate;
    arrangement = found;
    return true;
  }

  /** Whether other lines tie the two already. */
  private boolean connected(int[][] ties, Pair pair) {
    int[] first = new int[model.n];
    for (int i = 0; i < model.n; i++) {
      first[i] = i;
    }
    for (int[] tie : ties) {
      int from = first[tie[0]];
      int to = first[tie[1]];
      for (int i = 0; i < model.n; i++) {
        first[i] = first[i] == from ? to : first[i];
      }
    }
    return first[pair.a()] == first[pair.b()];
  }

  /** Pairs whose edges are nearer than the smaller of the two is long, the nearest first. */
  private List<Pair> pairs() {
    Arrangement spread = new SpreadOut(model, plan, arrangement).at(arrangement.t());
    Arrangement at = spread == null ? arrangement : spread;
    model.scales.at(at.t());
    List<Pair> all = new ArrayList<>();
    for (int b = 1; b < model.n; b++) {
      for (int a = 0; a < b; a++) {
        if (!loose[a] || !loose[b] || !model.sameWindows(a, b)) {
          continue; // a flat in a ruled window of its own looks best in the middle of it
        }
        boolean onX = (sides[Model.pair(a, b)] & (Model.A_ABOVE | Model.B_ABOVE)) != 0;
        double apart = Math.abs(edge(a, at, onX) - edge(b, at, onX));
        if (apart <= Math.min(size(a, onX), size(b, onX))) {
          all.add(new Pair(a, b, onX, apart));
        }
      }
    }
    all.sort(Comparator.comparingDouble(Pair::apart));
    return all;
  }

  private double edge(int i, Arrangement at, boolean onX) {
    return onX
        ? at.x()[i] + (anchorX - plan.anchorX()[i]) * size(i, true)
        : at.y()[i] + (BOTTOM - plan.anchorY()[i]) * size(i, false);
  }

  /** The ink's width or height at the scales last worked out. */
  private double size(int i, boolean onX) {
    Flat f = model.flats.get(i);
    double scale = model.scales.value[model.scales.classOf[i]] * model.scales.ratio[i];
    return scale * (onX ? f.ink().width() : f.ink().height());
  }
}
