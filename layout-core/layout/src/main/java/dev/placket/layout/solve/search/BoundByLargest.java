package dev.placket.layout.solve.search;

import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.stretch.StretchOrder;
import java.util.Arrays;

/**
 * Bounds what all flats can reach by what the largest of them reach alone: first two, and once
 * those are settled one more.
 *
 * <p>Fewer flats are sooner settled, and on a full sheet most of what the small ones cost at all
 * comes from the few that no longer find a nook.
 */
final class BoundByLargest {
  private final Model model;
  private final Best best;
  private final StepCounter steps;
  private final int[] bySize;
  private int count = 1;
  private SearchOrders search;

  /**
   * Begins with the two largest.
   *
   * @param bySize all flats, the largest first
   */
  BoundByLargest(Model model, Best best, StepCounter steps, int[] bySize) {
    this.model = model;
    this.best = best;
    this.steps = steps;
    this.bySize = bySize;
    this.search = withOneMore();
  }

  private SearchOrders withOneMore() {
    count++;
    int[] kept = Arrays.copyOf(bySize, Math.min(count, model.n));
    Arrays.sort(kept);
    Model some = model.subset(kept);
    Plan free = Plan.free(some);
    Best its = new Best(new StretchOrder(some, free), model.low, best.bound());
    return new SearchOrders(some, free, its, steps);
  }

  /**
   * Goes on for some steps, with one more flat each time that a number of them is settled.
   *
   * @param limit the most steps for any one number of flats
   */
  void run(long limit) {
    while (count < model.n && !best.proven() && !steps.over()) {
      Double settled = search.run(best.threshold(), limit);
      if (settled == null) {
        return;
      }
      best.prove(settled);
      search = withOneMore();
    }
  }
}
