package dev.placket.layout.solve;

import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.OrderStep;
import dev.placket.layout.fit.Outcome;
import dev.placket.layout.fit.Placement;
import dev.placket.layout.fit.Proof;
import dev.placket.layout.fit.ReadingOrder;
import dev.placket.layout.solve.conflict.ExplainConflict;
import dev.placket.layout.solve.finish.Balance;
import dev.placket.layout.solve.finish.FinishExactly;
import dev.placket.layout.solve.finish.GrowOn;
import dev.placket.layout.solve.levels.RaiseLevels;
import dev.placket.layout.solve.look.Look;
import dev.placket.layout.solve.model.Arrangement;
import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.model.ReadRequest;
import dev.placket.layout.solve.order.LineUp;
import dev.placket.layout.solve.order.OrderStart;
import dev.placket.layout.solve.order.OrderedArrangement;
import dev.placket.layout.solve.search.Best;
import dev.placket.layout.solve.search.ProveScale;
import dev.placket.layout.solve.search.StepCounter;
import java.util.ArrayList;
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
   * @param cancelled polled during the search; true ends it
   */
  public static Outcome fit(FitRequest request, BooleanSupplier cancelled) {
    Outcome outcome = solve(request, cancelled, false);
    return outcome instanceof Conflict c
        ? new ExplainConflict(request, r -> solve(r, cancelled, true)).run(c.proven(), c.steps())
        : outcome;
  }

  /**
   * As {@link #fit(FitRequest)}, but a conflict is not explained: for whoever tries several sheets
   * and wants the best, since why one of them does not hold the flats takes longer to find.
   *
   * @param request sheet, flats and what is asked of them
   */
  public static Outcome attempt(FitRequest request) {
    return solve(request, () -> false, false);
  }

  /**
   * The search from reading to rounding, range by range of the common scale; mostly there is one.
   *
   * @param any whether any arrangement will do
   */
  static Outcome solve(FitRequest request, BooleanSupplier cancelled, boolean any) {
    ReadRequest reading = new ReadRequest(request);
    List<Model> ranges = reading.read();
    if (ranges.isEmpty()) {
      return new Conflict(reading.contradictions(), List.of(), true, false, 0);
    }
    StepCounter all = new StepCounter(request.budget().steps(), cancelled);
    double unsettled = 0;
    boolean lost = false;
    for (Model model : ranges) {
      boolean last = model == ranges.get(ranges.size() - 1);
      Best best = prove(model, last ? all : all.half(), any);
      unsettled = Math.max(unsettled, boundOf(model, best));
      Fit fit = finish(model, best, unsettled, all, any);
      if (fit != null) {
        return fit;
      }
      lost |= best.arrangement() != null;
    }
    if (any && lost) {
      // What was found first leaves no room to round; the largest may.
      return solve(request.withOrder(Order.NONE).withGrowth(false), cancelled, false);
    }
    return new Conflict(List.of(), List.of(), unsettled == 0, false, all.taken());
  }

  private static Best prove(Model model, StepCounter steps, boolean any) {
    ProveScale prove = new ProveScale(model, steps);
    return any ? prove.findAny() : prove.run();
  }

  /** What may still be reached in this range; 0 if it is known to hold nothing. */
  private static double boundOf(Model model, Best best) {
    if (!model.exact) {
      return model.end;
    }
    return best.refuted() ? 0 : best.bound();
  }

  /** The fit, with as much order as the request pays for; null if this range holds none. */
  private static @Nullable Fit finish(
      Model model, Best best, double bound, StepCounter steps, boolean any) {
    Arrangement largest = best.arrangement();
    if (largest == null) {
      return null;
    }
    Plan plan = Plan.free(model);
    if (ListedOrder.applies(model)) {
      StepCounter own = new StepCounter(model.request.budget().steps(), steps.cancelled());
      ListedOrder.InOrder listed = ListedOrder.find(model, largest, best.bound(), own, any);
      plan = listed.plan();
      largest = listed.arrangement();
    }
    return largest == null ? null : finish(model, plan, largest, bound, steps, any);
  }

  private static @Nullable Fit finish(
      Model model, Plan plan, Arrangement largest, double bound, StepCounter steps, boolean any) {
    Order order = model.request.order();
    if (!any && order.share() > 0 && !order.wishes().isEmpty()) {
      Fit fit = inOrder(model, plan, largest, bound, steps);
      if (fit != null) {
        return fit;
      }
    }
    return finish(model, plan, largest, bound, steps.taken(), List.of(), steps.cancelled());
  }

  /** The best of the fits in order, from each start. */
  private static @Nullable Fit inOrder(
      Model model, Plan plan, Arrangement largest, double bound, StepCounter steps) {
    List<Fit> fits = new ArrayList<>();
    long taken = steps.taken();
    for (OrderStart start : OrderStart.of(model, plan, largest, steps)) {
      LineUp lines = new LineUp(start, largest.t(), steps.cancelled());
      List<OrderedArrangement> ways = lines.run();
      taken += lines.stepsTaken();
      Fit fit = bestLooking(start.model(), ways, bound, taken, steps.cancelled());
      if (fit != null) {
        fits.add(fit);
      }
    }
    return fits.isEmpty() ? null : CompareFits.best(model.request, fits);
  }

  /** Of several ways to line up, the one that looks best by the published measures. */
  private static @Nullable Fit bestLooking(
      Model model,
      List<OrderedArrangement> ways,
      double bound,
      long steps,
      BooleanSupplier cancelled) {
    Fit best = null;
    double most = 0;
    for (OrderedArrangement way : ways) {
      Fit fit = finish(model, way.plan(), way.arrangement(), bound, steps, way.steps(), cancelled);
      double order = fit == null || ways.size() == 1 ? 0 : Look.of(model.request, fit).order();
      if (fit != null && (best == null || order > most)) {
        best = fit;
        most = order;
      }
    }
    return best;
  }

  /** The arrangement rounded, and grown on where that is asked for. */
  private static @Nullable Fit finish(
      Model model,
      Plan plan,
      Arrangement chosen,
      double bound,
      long steps,
      List<OrderStep> order,
      BooleanSupplier cancelled) {
    FinishExactly.Finished done = new FinishExactly(model, plan).finish(chosen);
    if (done == null) {
      return null;
    }
    double above = Math.max(bound, Math.nextUp(done.scale().doubleValue()));
    if (!model.request.growth()) {
      List<OrderStep> taken = measured(model, done.placements(), order);
      return new Fit(done.placements(), new Proof(done.scale(), above, steps, false), taken);
    }
    double[] cap = GrowOn.caps(model, done.commons());
    RaiseLevels levels = new RaiseLevels(model, plan, done, cap, cancelled);
    GrowOn growth = new GrowOn(model, plan, levels.run(), cap);
    List<Placement> grown = growth.placements();
    List<OrderStep> taken = measured(model, grown, order);
    Proof proof = new Proof(done.scale(), above, steps + levels.steps(), growth.exact());
    return new Fit(grown, proof, taken, levels.levels());
  }

  /** Whether balance and the order of reading came about shows in the finished placements only. */
  private static List<OrderStep> measured(
      Model model, List<Placement> placements, List<OrderStep> order) {
    return order.stream()
        .map(
            s ->
                switch (s.wish()) {
                  case BALANCE ->
                      new OrderStep(s.wish(), Balance.holds(model, placements), s.price());
                  case IN_ORDER ->
                      new OrderStep(
                          s.wish(), ReadingOrder.of(model.flats, placements).isKept(), s.price());
                  default -> s;
                })
        .toList();
  }
}
