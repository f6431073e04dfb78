package dev.placket.layout.solve.conflict;

import dev.placket.layout.fit.Budget;
import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.Outcome;
import dev.placket.layout.fit.Relief;
import dev.placket.layout.fit.Requirement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Explains why nothing fits: the demands that conflict, and the minimum amount of each cure. */
public final class ExplainConflict {
  /**
   * A relief is found to this share of its largest amount, from above: the amount stated always
   * cures.
   */
  private static final int HALVINGS = 12;

  /** Once so many steps are spent, every further check has few. */
  private static final long MANY_STEPS = 200_000;

  private static final Budget FEW = new Budget(500);

  private final FitRequest request;
  private final Function<FitRequest, Outcome> solve;
  private boolean complete = true;
  private long steps;

  /** An explanation for a request, with the solver that it tries changed requests on. */
  public ExplainConflict(FitRequest request, Function<FitRequest, Outcome> solve) {
    this.request = request.withOrder(Order.NONE).withGrowth(false);
    this.solve = solve;
  }

  /** The conflict of a request that is known to have no fit, {@code proven} or not. */
  public Conflict run(boolean proven, long stepsSoFar) {
    steps = stepsSoFar;
    List<Requirement> core =
        new PreferredConflict<Requirement>(
                kept -> Demands.empty(kept) || fits(Demands.only(request, kept)))
            .among(Demands.of(request));
    boolean minimal = complete && proven;
    return new Conflict(core, reliefs(core), proven, minimal, steps);
  }

  private List<Relief> reliefs(List<Requirement> core) {
    List<Relief> found = new ArrayList<>();
    for (Cure cure : Cures.of(request, core)) {
      if (cure.measured()) {
        Double amount = least(cure.most(), cure.by());
        if (amount != null) {
          found.add(cure.of(amount));
        }
      } else if (fits(cure.by().apply(1))) {
        found.add(cure.of(1));
      }
    }
    found.sort(Comparator.comparing((Relief r) -> r.unit()).thenComparingDouble(Relief::amount));
    return found;
  }

  /**
   * The least amount up to {@code most} that makes it fit, from above; null if even that does not.
   */
  private @Nullable Double least(double most, DoubleFunction<FitRequest> relieved) {
    if (!fits(relieved.apply(most))) {
      return null;
    }
    double tooLittle = 0;
    double enough = most;
    for (int i = 0; i < HALVINGS || tooLittle < 0.9 * enough; i++) {
      double middle = (tooLittle + enough) / 2;
      if (i > 4 * HALVINGS) {
        break;
      }
      if (fits(relieved.apply(middle))) {
        enough = middle;
      } else {
        tooLittle = middle;
      }
    }
    return enough;
  }

  private boolean fits(FitRequest tried) {
    boolean few = steps > MANY_STEPS && tried.budget().steps() > FEW.steps();
    Outcome outcome = solve.apply(few ? tried.withBudget(FEW) : tried);
    if (outcome instanceof Conflict c) {
      steps += c.steps();
      complete &= c.proven();
      return false;
    }
    steps += ((Fit) outcome).proof().steps();
    return true;
  }
}
