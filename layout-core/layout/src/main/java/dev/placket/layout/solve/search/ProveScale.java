package dev.placket.layout.solve.search;

import dev.placket.layout.solve.model.Arrangement;
import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.model.Shapes;
import dev.placket.layout.solve.stretch.StretchOrder;
import java.util.ArrayList;
import java.util.List;

/**
 * The largest common scale, from first bound to proof.
 *
 * <p>What is done in which order depends on the request alone, never on the budget: a larger budget
 * goes the same way and only goes further.
 */
public final class ProveScale {
  /** Steps for the bound before anything is placed: a few times what two flats take. */
  private static final long FIRST = 200;

  /** How much longer each run of the search is than the one before. */
  private static final int LONGER = 3;

  /** For so many rounds bound and neighbourhoods get as many steps as the search itself. */
  private static final int EQUAL = 3;

  /** With more flats a proof is out of reach, and a better arrangement is worth more steps. */
  private static final int PROVABLE = 16;

  /** Then the search gets so many times more: mostly only the proof is still missing. */
  private static final int LESSER = 3;

  private final Model model;
  private final Plan plan;
  private final Best best;
  private final StepCounter steps;

  /** Whether any arrangement will do: no plan narrows the choice. */
  private final boolean free;

  private boolean any;

  /** A search for the largest t of a model. */
  public ProveScale(Model model, StepCounter steps) {
    this(model, Plan.free(model), model.low, Double.POSITIVE_INFINITY, steps, true);
  }

  /**
   * A search for the largest t among the arrangements that keep a plan.
   *
   * @param low no t below this is wanted
   * @param bound no t above this is possible, as far as is known
   */
  public ProveScale(Model model, Plan plan, double low, double bound, StepCounter steps) {
    this(model, plan, low, bound, steps, false);
  }

  private ProveScale(
      Model model, Plan plan, double low, double bound, StepCounter steps, boolean free) {
    this.model = model;
    this.free = free;
    this.steps = steps;
    this.plan = plan;
    this.best = new Best(new StretchOrder(model, plan), low, Math.min(bound, BoundScale.of(model)));
  }

  /** Begins with an arrangement that is known. */
  public ProveScale from(Arrangement known) {
    best.offer(known);
    return this;
  }

  /** Works until the best is proven or the steps end. */
  public Best run() {
    if (placeInGrid()) {
      return best;
    }
    BoundByLargest largest = new BoundByLargest(model, best, steps, bySize(best.bound()).get(0));
    if (best.hopeless()) {
      return best;
    }
    largest.run(FIRST);
    if (best.arrangement() == null && isFree()) {
      placeGreedily();
    }
    SearchOrders search = new SearchOrders(model, plan, best, steps);
    LookAround around = new LookAround(model, plan, best, steps);
    long limit = 200L * model.n;
    for (int round = 0; !done(); round++) {
      Double proven = search.run(best.threshold(), limit);
      if (proven != null) {
        best.prove(proven);
        break;
      }
      long aside = round < EQUAL ? limit : limit / LESSER;
      largest.run(aside);
      around.run(model.n > PROVABLE ? limit : aside);
      limit *= LONGER;
    }
    return best;
  }

  /** Whether all flats are alike and have one clear room, in which a grid is proven by counting. */
  private boolean placeInGrid() {
    if (!free || best.arrangement() != null) {
      return false;
    }
    Arrangement grid = new PlaceInGrid(model, plan).largest(model.low, best.bound());
    if (grid == null) {
      return false;
    }
    best.offer(grid);
    best.prove(grid.t());
    return true;
  }

  /** Whether no anchors are tied: flats placed one after the other keep no ties. */
  private boolean isFree() {
    return plan.tiesX().length + plan.tiesY().length == 0;
  }

  /** Works until anything is found, or it is known that nothing fits, or the steps end. */
  public Best findAny() {
    any = true;
    return run();
  }

  private boolean done() {
    return best.proven() || best.hopeless() || steps.over() || (any && best.arrangement() != null);
  }

  private void placeGreedily() {
    PlaceGreedily place = new PlaceGreedily(model, plan);
    List<int[]> orders = bySize(best.bound());
    double t = best.bound();
    int rounds = t < model.low ? 0 : 60;
    for (int round = 0; round < rounds && best.arrangement() == null && !steps.over(); round++) {
      for (int k = 0; k < 16 && best.arrangement() == null && steps.take(); k++) {
        Arrangement found = place.place(t, orders.get(k % orders.size()), k % 8);
        if (found != null) {
          best.offer(found);
        }
      }
      rounds = t > model.low ? rounds : 0;
      t = Math.max(model.low, round > 40 ? t / 2 : t * 0.93);
    }
    for (int k = 0; k < 8 * orders.size() && !done(); k++) {
      climb(place, orders.get(k % orders.size()), k / orders.size());
    }
  }

  private void climb(PlaceGreedily place, int[] order, int manner) {
    while (!done() && steps.take()) {
      Arrangement found = place.place(best.threshold(), order, manner);
      if (found == null || !best.offer(found)) {
        return;
      }
    }
  }

  /** The flats by falling area, height, width, longest side, and as they were given. */
  private List<int[]> bySize(double t) {
    Shapes s = new Shapes(model, plan.anchorX(), plan.anchorY()).at(t);
    List<int[]> orders = new ArrayList<>();
    orders.add(sorted(i -> s.width(i) * s.height(i)));
    orders.add(sorted(s::height));
    orders.add(sorted(s::width));
    orders.add(sorted(i -> Math.max(s.width(i), s.height(i))));
    orders.add(sorted(i -> 0));
    return orders;
  }

  private int[] sorted(java.util.function.IntToDoubleFunction size) {
    return java.util.stream.IntStream.range(0, model.n)
        .boxed()
        .sorted((a, b) -> Double.compare(size.applyAsDouble(b), size.applyAsDouble(a)))
        .mapToInt(Integer::intValue)
        .toArray();
  }
}
