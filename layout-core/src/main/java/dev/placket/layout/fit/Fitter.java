package dev.placket.layout.fit;

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
    return new Rough(request).run();
  }
}
