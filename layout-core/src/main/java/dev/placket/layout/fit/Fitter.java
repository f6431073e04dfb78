package dev.placket.layout.fit;

import java.util.List;
import java.util.function.BooleanSupplier;

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
    if (level == null) {
      return new Conflict(List.of(), List.of(), best.refuted(), false, steps.taken());
    }
    double bound = Math.max(best.bound(), Math.nextUp(level.scale().doubleValue()));
    return new Fit(
        level.placements(), new Proof(level.scale(), bound, steps.taken(), false), List.of());
  }
}
