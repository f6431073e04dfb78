package dev.placket.layout.solve.order;

import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.OrderStep;
import dev.placket.layout.fit.OrderWish;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.solve.model.Arrangement;
import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.search.Best;
import dev.placket.layout.solve.search.ProveScale;
import dev.placket.layout.solve.search.StepCounter;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What wishes for order start from: the largest arrangement, or one on each side of a line.
 *
 * <p>A line that parts views from other flats is options removed from their pairs, and gaps with
 * room for the line. Its place is free. So one search finds the best place of an upright line, and
 * one that of a level line.
 *
 * @param model as searched; with wider gaps where a line parts the flats
 * @param plan what the arrangement keeps
 * @param arrangement the largest known under the plan
 * @param upper no arrangement under the plan is known to have a larger t
 * @param steps what became of the wish for a line; empty where none was asked
 */
public record OrderStart(
    Model model, Plan plan, Arrangement arrangement, double upper, List<OrderStep> steps) {
  /** Steps for one direction of the line. */
  private static final long STEPS = 4000;

  /** With more flats the wishes follow only the direction in which they come out larger. */
  private static final int MANY = 40;

  /** Copies the list. */
  public OrderStart {
    steps = List.copyOf(steps);
  }

  /** The least t that the share of the request's order allows. */
  static double floor(Model model, double largest) {
    return Math.max(model.low, largest * (1 - model.request.order().share()));
  }

  /**
   * The starts of a request: one, or one for each direction of a line that its share pays for.
   *
   * @param plan what the largest arrangement keeps
   * @param largest the largest arrangement known
   */
  public static List<OrderStart> of(
      Model model, Plan plan, Arrangement largest, StepCounter steps) {
    Plan free = plan.withOptions(model.options);
    Order order = model.request.order();
    if (!order.wishes().contains(OrderWish.PARTED) || !hasBoth(model)) {
      return List.of(new OrderStart(model, free, largest, largest.t(), List.of()));
    }
    List<OrderStart> parted = new ArrayList<>();
    for (boolean upright : new boolean[] {true, false}) {
      OrderStart start = parted(model, free, largest.t(), upright, steps);
      if (start != null) {
        parted.add(start);
      }
    }
    if (model.n > MANY && parted.size() > 1) {
      boolean first = parted.get(0).arrangement().t() >= parted.get(1).arrangement().t();
      parted.remove(first ? 1 : 0);
    }
    OrderStep lost = new OrderStep(OrderWish.PARTED, false, 0);
    return parted.isEmpty()
        ? List.of(new OrderStart(model, free, largest, largest.t(), List.of(lost)))
        : parted;
  }

  private static @Nullable OrderStart parted(
      Model model, Plan from, double largest, boolean upright, StepCounter steps) {
    Model apart = model.withGaps(gaps(model));
    PlanLines lines = new PlanLines(apart, from);
    for (int v = 0; v < model.n; v++) {
      for (int d = 0; d < model.n; d++) {
        if (parts(model, v, d)) {
          lines.precede(v, d, upright, !upright);
        }
      }
    }
    if (lines.broken()) {
      return null;
    }
    Plan plan = lines.plan();
    StepCounter own = new StepCounter(STEPS, steps.cancelled());
    double floor = floor(model, largest);
    Best best = new ProveScale(apart, plan, floor, largest, own).run();
    Arrangement found = best.arrangement();
    if (found == null || found.t() < floor) {
      return null;
    }
    double price = Math.max(0, 1 - found.t() / largest);
    return new OrderStart(
        apart, plan, found, best.bound(), List.of(new OrderStep(OrderWish.PARTED, true, price)));
  }

  private static boolean hasBoth(Model model) {
    for (int v = 0; v < model.n; v++) {
      for (int d = 0; d < model.n; d++) {
        if (parts(model, v, d)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether the line stands between a view and another flat of the same windows. */
  private static boolean parts(Model model, int view, int other) {
    return model.flats.get(view).role().isView()
        && !model.flats.get(other).role().isView()
        && model.sameWindows(view, other);
  }

  /** Between views and other flats both clearances and the line have room. */
  private static double[][] gaps(Model model) {
    double[][] gaps = new double[model.n][];
    Spacing spacing = model.request.spacing();
    for (int i = 0; i < model.n; i++) {
      gaps[i] = model.gap[i].clone();
      for (int j = 0; j < model.n; j++) {
        if (parts(model, i, j) || parts(model, j, i)) {
          double clear =
              spacing.clearance(model.flats.get(i).role()).pt()
                  + spacing.clearance(model.flats.get(j).role()).pt()
                  + Order.PARTING_LINE.pt();
          gaps[i][j] = Math.max(gaps[i][j], clear);
        }
      }
    }
    return gaps;
  }
}
