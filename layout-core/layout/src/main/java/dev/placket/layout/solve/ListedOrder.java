package dev.placket.layout.solve;

import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.fit.ReadingOrder;
import dev.placket.layout.solve.model.Arrangement;
import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.model.Shapes;
import dev.placket.layout.solve.order.Keeps;
import dev.placket.layout.solve.search.Best;
import dev.placket.layout.solve.search.ProveScale;
import dev.placket.layout.solve.search.StepCounter;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The largest arrangement in which the flats of each list are read in its order.
 *
 * <p>The pairs of a list have two options left, left or above, which every arrangement in order
 * takes; the bound comes from those alone. That no later flat stands wholly above an earlier one is
 * a further distance between anchors. It holds from a least scale on, so several are tried, the
 * highest first.
 */
final class ListedOrder {
  /** The least scales that are tried, as shares of the largest found with the options alone. */
  private static final double[] SHARES = {0.95, 0.8, 0.5, 0.2, 0};

  private ListedOrder() {}

  /** Whether the request lists any flats. */
  static boolean applies(Model model) {
    return !pairs(model).isEmpty();
  }

  /**
   * An arrangement with the plan that it keeps.
   *
   * @param plan what later steps keep as well
   * @param arrangement the largest found; null if there is none
   */
  record InOrder(Plan plan, @Nullable Arrangement arrangement) {}

  /**
   * The largest arrangement in order.
   *
   * @param largest the largest with the two options alone
   * @param bound no t above this is possible
   * @param any whether any arrangement will do
   */
  static InOrder find(
      Model model, Arrangement largest, double bound, StepCounter steps, boolean any) {
    Plan free = Plan.free(model);
    for (double share : SHARES) {
      double from = Math.max(model.low, share * largest.t());
      Plan plan = free.withReads(reads(model, from));
      if (Keeps.plan(model, free, plan, largest)) {
        return new InOrder(plan, largest);
      }
      ProveScale prove = new ProveScale(model, plan, from, bound, steps);
      Best best = any ? prove.findAny() : prove.run();
      Arrangement found = best.arrangement();
      if (found != null && found.t() >= from) {
        return new InOrder(plan, found);
      }
    }
    return new InOrder(free, null);
  }

  private static Plan.Reads[] reads(Model model, double from) {
    Plan free = Plan.free(model);
    Shapes least = new Shapes(model, free.anchorX(), free.anchorY()).at(from);
    return pairs(model).stream()
        .map(p -> new Plan.Reads(p[0], p[1], 0, from).about(least))
        .toArray(Plan.Reads[]::new);
  }

  private static List<int[]> pairs(Model model) {
    List<int[]> pairs = new ArrayList<>();
    if (!model.request.rules().contains(LeadRule.LISTED_IN_ORDER)) {
      return pairs;
    }
    for (int b = 1; b < model.n; b++) {
      for (int a = 0; a < b; a++) {
        if (ReadingOrder.isListed(model.flats.get(a), model.flats.get(b))) {
          pairs.add(new int[] {a, b});
        }
      }
    }
    return pairs;
  }
}
