package dev.placket.layout.fit;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/** Places the flats of a request as large as they go, and says how near the largest they are. */
public final class Fitter {
  private Fitter() {}

  /**
   * The best fit known within the request's budget, or the conflict.
   *
   * <p>The same request gives the same answer on any machine.
   *
   * @param request sheet, flats and what is asked of them
   */
  public static Outcome fit(FitRequest request) {
    return fit(request, () -> false);
  }

  /**
   * As {@link #fit(FitRequest)}, ending early with the best so far once the caller says so.
   *
   * @param request sheet, flats and what is asked of them
   * @param cancelled asked now and then; true ends the search
   */
  public static Outcome fit(FitRequest request, BooleanSupplier cancelled) {
    Outcome outcome = solve(request, cancelled, false);
    return outcome instanceof Conflict c
        ? new ExplainConflict(request, r -> solve(r, cancelled, true)).run(c.proven(), c.steps())
        : outcome;
  }

  /**
   * The search from reading to rounding.
   *
   * @param any whether any arrangement will do
   */
  private static Outcome solve(FitRequest request, BooleanSupplier cancelled, boolean any) {
    ReadRequest reading = new ReadRequest(request);
    Model model = reading.read();
    if (!reading.contradictions().isEmpty()) {
      return new Conflict(reading.contradictions(), List.of(), true, false, 0);
    }
    Steps steps = new Steps(request.budget().steps(), cancelled);
    ProveScale prove = new ProveScale(model, steps);
    Best best = any ? prove.findAny() : prove.run();
    Arrangement largest = best.arrangement();
    if (largest == null) {
      return new Conflict(List.of(), List.of(), best.refuted(), false, steps.taken());
    }
    Plan free = Plan.free(model);
    Fit ordered = any ? null : ordered(model, best, largest, steps, cancelled);
    if (ordered != null) {
      return ordered;
    }
    FinishExactly.Finished level = new FinishExactly(model, free).finish(largest);
    return level == null
        ? new Conflict(List.of(), List.of(), false, false, steps.taken())
        : fit(model, free, level, best, steps.taken(), List.of());
  }

  /** The fit with as much order as the request pays for; null if it pays for none. */
  private static @Nullable Fit ordered(
      Model model, Best best, Arrangement largest, Steps steps, BooleanSupplier cancelled) {
    Order order = model.request.order();
    if (order.share() == 0 || order.wishes().isEmpty()) {
      return null;
    }
    LineUp lines = new LineUp(model, largest, cancelled).run();
    Plan plan = lines.plan();
    FinishExactly.Finished done = new FinishExactly(model, plan).finish(lines.arrangement());
    long taken = steps.taken() + lines.stepsTaken();
    return done == null ? null : fit(model, plan, done, best, taken, lines.steps());
  }

  /** The fit of a finished arrangement, grown on where that is asked for. */
  private static Fit fit(
      Model model,
      Plan plan,
      FinishExactly.Finished done,
      Best best,
      long steps,
      List<OrderStep> order) {
    BigDecimal scale = done.scale();
    double bound = Math.max(best.bound(), Math.nextUp(scale.doubleValue()));
    if (!model.request.growth()) {
      List<OrderStep> taken = balanced(model, done.placements(), order);
      return new Fit(done.placements(), new Proof(scale, bound, steps, false), taken);
    }
    GrowOn growth = new GrowOn(model, plan, done);
    List<Placement> grown = growth.placements();
    List<OrderStep> taken = balanced(model, grown, order);
    return new Fit(grown, new Proof(scale, bound, steps, growth.exact()), taken);
  }

  /** Whether balance came about shows in the finished placements only. */
  private static List<OrderStep> balanced(
      Model model, List<Placement> placements, List<OrderStep> order) {
    return order.stream()
        .map(
            s ->
                s.wish() == OrderWish.BALANCE
                    ? new OrderStep(s.wish(), Balance.holds(model, placements), 0)
                    : s)
        .toList();
  }
}
