package dev.placket.layout.solve.conflict;

import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Relief;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * A change that may cure a conflict.
 *
 * @param kind what would change
 * @param of what it would change of
 * @param edge which edge, or null
 * @param most the largest amount there is
 * @param unit of the amount
 * @param by the request changed by an amount, from above 0 to {@code most}
 */
record Cure(
    Relief.Kind kind,
    String of,
    Relief.@Nullable Edge edge,
    double most,
    Relief.Unit unit,
    DoubleFunction<FitRequest> by) {
  /** Whether there are amounts between none and all. */
  boolean measured() {
    return unit == Relief.Unit.POINT || unit == Relief.Unit.RATIO;
  }

  Relief of(double amount) {
    return new Relief(kind, of, edge, amount, unit);
  }
}
