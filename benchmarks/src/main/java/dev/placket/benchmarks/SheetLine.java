package dev.placket.benchmarks;

import dev.placket.benchmarks.pages.ReferencePage;
import dev.placket.benchmarks.pages.ReferencePage.Expected;
import dev.placket.layout.check.Referee;
import dev.placket.layout.fit.Budget;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What was measured on one sheet.
 *
 * @param page the sheet
 * @param end the run with the whole budget
 * @param ms1pct time of the smallest doubled budget within 1 % of the largest scale known
 * @param msBest time of the smallest doubled budget that reaches the final scale
 * @param msProof time of the smallest doubled budget that proves it
 * @param broken what the referee found in the final fit
 */
record SheetLine(
    ReferencePage page,
    Solve end,
    double ms1pct,
    double msBest,
    double msProof,
    List<String> broken) {
  static final String HEADER =
      "id\tflats\tscale\tbound\tproven\tms1pct\tmsBest\tmsProof\tsteps\tviolation";

  private static final double ONE_PERCENT = 0.99;
  private static final double KNOWN = 1e-6;

  /** Runs the sheet with the whole budget, then with doubled budgets from one step on. */
  static SheetLine measure(ReferencePage page, Budget budget) {
    FitRequest request = page.request().withBudget(budget);
    Solve end = Solve.of(request);
    Expected known = page.expected();
    double best = Math.max(end.scale(), known == null ? 0 : known.bestKnown());
    double ms1pct = Double.NaN;
    double msBest = Double.NaN;
    double msProof = end.proven() ? end.ms() : Double.NaN;
    for (long steps = 1; end.fits() && Double.isNaN(msBest); steps *= 2) {
      boolean last = steps >= end.steps() || steps >= budget.steps();
      Solve run = last ? end : Solve.of(request.withBudget(new Budget(steps)));
      if (Double.isNaN(ms1pct) && run.scale() >= ONE_PERCENT * best) {
        ms1pct = run.ms();
      }
      if (run.scale() >= end.scale()) {
        msBest = run.ms();
      }
      if (run.proven()) {
        msProof = Math.min(msProof, run.ms());
      }
    }
    return new SheetLine(page, end, ms1pct, msBest, msProof, broken(request, end));
  }

  private static List<String> broken(FitRequest request, Solve end) {
    if (!(end.outcome() instanceof Fit fit)) {
      return List.of();
    }
    return Referee.check(request, fit).stream().map(b -> b.rule() + ": " + b.message()).toList();
  }

  /** The line in the columns of {@link #HEADER}. */
  String text() {
    return String.join(
        "\t",
        page.id(),
        Integer.toString(page.flats().size()),
        number(end.scale(), 9),
        number(end.bound(), 9),
        Boolean.toString(end.proven()),
        number(ms1pct, 3),
        number(msBest, 3),
        number(msProof, 3),
        Long.toString(end.steps()),
        Integer.toString(broken.size()));
  }

  /** What cannot be true: broken rules, and answers that contradict what is known. */
  List<String> wrong() {
    List<String> wrong = new ArrayList<>(broken);
    Expected known = page.expected();
    if (known != null && end.scale() > known.bound() * (1 + KNOWN)) {
      wrong.add("scale " + end.scale() + " is above the known bound " + known.bound());
    }
    if (known != null && end.bound() < known.bestKnown() * (1 - KNOWN)) {
      wrong.add("bound " + end.bound() + " is under the known scale " + known.bestKnown());
    }
    return wrong;
  }

  /** Whether the largest scale known is reached, to one part in a million. */
  boolean reachesBest() {
    Expected known = page.expected();
    return known != null && end.scale() >= known.bestKnown() * (1 - KNOWN);
  }

  static String number(double value, int digits) {
    return Double.isNaN(value) ? "NaN" : String.format(Locale.ROOT, "%." + digits + "f", value);
  }
}
