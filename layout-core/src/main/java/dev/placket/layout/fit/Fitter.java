package dev.placket.layout.fit;

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
    FinishExactly.Finished level =
        largest == null ? null : new FinishExactly(model, Plan.free(model)).finish(largest);
    Fit ordered = largest == null || any ? null : ordered(model, best, largest, steps, cancelled);
    if (ordered != null) {
      return ordered;
    }
    if (level == null) {
      return new Conflict(List.of(), List.of(), best.refuted(), false, steps.taken());
    }
    double bound = Math.max(best.bound(), Math.nextUp(level.scale().doubleValue()));
    return new Fit(
        level.placements(), new Proof(level.scale(), bound, steps.taken(), false), List.of());
  }

  /** The fit with as much order as the request pays for; null if it pays for none. */
  private static @Nullable Fit ordered(
      Model model, Best best, Arrangement largest, Steps steps, BooleanSupplier cancelled) {
    Order order = model.request.order();
    if (order.share() == 0 || order.wishes().isEmpty()) {
      return null;
    }
    LineUp lines = new LineUp(model, largest, cancelled).run();
    FinishExactly.Finished done =
        new FinishExactly(model, lines.plan()).finish(lines.arrangement());
    if (done == null) {
      return null;
    }
    double bound = Math.max(best.bound(), Math.nextUp(done.scale().doubleValue()));
    long taken = steps.taken() + lines.stepsTaken();
    return new Fit(done.placements(), new Proof(done.scale(), bound, taken, false), lines.steps());
  }
}
