package dev.placket.layout.plan;

import dev.placket.layout.check.Breach;
import dev.placket.layout.check.Referee;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.FlowResult;
import dev.placket.layout.fit.FlowSheet;
import dev.placket.layout.fit.OrderWish;
import dev.placket.layout.fit.Outcome;
import dev.placket.layout.flat.FlatShape;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.solve.ChooseShapes;
import dev.placket.layout.solve.Fitter;
import dev.placket.layout.solve.FurtherSheets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BooleanSupplier;

/**
 * Places flats on sheets and returns only fits that the referee has passed: the way in for programs
 * that link the library. Lengths on a sheet are in points from its top left corner.
 */
public final class Planner {
  private Planner() {}

  /**
   * Places the flats of a request on its sheet.
   *
   * @return a {@link Fit}, or a {@link dev.placket.layout.fit.Conflict} that names what cannot be
   *     met together
   * @throws RefutedFitException if the solver returns a fit that breaks a rule, an internal error
   */
  public static Outcome plan(FitRequest request) {
    return plan(request, () -> false);
  }

  /**
   * As {@link #plan(FitRequest)}, ending early once the caller asks for it.
   *
   * @param request the sheet, the flats and the rules
   * @param cancelled polled during the search; true ends it with the best fit found so far
   */
  public static Outcome plan(FitRequest request, BooleanSupplier cancelled) {
    return checked(request, Fitter.fit(request, cancelled));
  }

  /**
   * As {@link #plan(FitRequest)}, where flats offer several footprints: those with which the common
   * scale is largest, or hardly smaller if more of the order is kept. The bound of the fit is that
   * of all footprints. One search for each choice.
   *
   * @param request the sheet, the flats and the rules
   * @param shapes one or more footprints for some of the flats, by id, preferred ones first
   * @param share how much of the scale may be given up for footprints that are named earlier, from
   *     0 to 1
   * @throws RefutedFitException if the solver returns a fit that breaks a rule, an internal error
   * @throws IllegalArgumentException if a list is empty, none of a list suits its flat, or there
   *     are more than {@link ChooseShapes#MOST} choices
   */
  public static ShapedOutcome plan(
      FitRequest request, Map<String, List<FlatShape>> shapes, double share) {
    ShapedOutcome best = null;
    long least = Long.MAX_VALUE;
    for (ChooseShapes.Choice choice : ChooseShapes.of(request, shapes, share)) {
      ShapedOutcome made = shaped(choice);
      long relaxed =
          made.outcome() instanceof Fit fit
              ? fit.order().stream().filter(o -> !o.kept() && o.wish() != OrderWish.BALANCE).count()
              : least;
      if (best == null || relaxed < least) {
        best = made;
        least = relaxed;
      }
    }
    return Objects.requireNonNull(best);
  }

  private static ShapedOutcome shaped(ChooseShapes.Choice choice) {
    Outcome outcome = plan(choice.request());
    return new ShapedOutcome(choice.request(), choice.shapes(), outcome).boundedBy(choice.bound());
  }

  /**
   * As {@link #plan(FitRequest)}, but a conflict is not explained, which takes longer than to find
   * it: for trying several sheets, of which only the best matters.
   *
   * @return a fit, or a conflict that names at most what contradicts itself in the request
   * @throws RefutedFitException if the solver returns a fit that breaks a rule, an internal error
   */
  public static Outcome attempt(FitRequest request) {
    return checked(request, Fitter.attempt(request));
  }

  /**
   * Places the flats of a request on as few sheets of one kind as they need.
   *
   * @throws RefutedFitException if the solver returns a fit that breaks a rule, an internal error
   */
  public static FlowResult planSheets(FitRequest request) {
    return planSheets(request, List.of(request.sheet()), request.sheet());
  }

  /**
   * As {@link #planSheets(FitRequest)}, where the first sheet may be ruled in several ways.
   *
   * @param request all flats; its sheet is the ruling that a conflict refers to
   * @param firsts the rulings of the first sheet, one or more
   * @param further the ruling of all further sheets
   */
  public static FlowResult planSheets(FitRequest request, List<Sheet> firsts, Sheet further) {
    FlowResult flow = FurtherSheets.fit(request, firsts, further, () -> false);
    for (FlowSheet each : flow.sheets()) {
      check(each.request(), each.fit());
    }
    return flow;
  }

  private static Outcome checked(FitRequest request, Outcome outcome) {
    if (outcome instanceof Fit fit) {
      check(request, fit);
    }
    return outcome;
  }

  static void check(FitRequest request, Fit fit) {
    List<Breach> breaches = Referee.check(request, fit);
    if (!breaches.isEmpty()) {
      throw new RefutedFitException(request, breaches);
    }
  }
}
