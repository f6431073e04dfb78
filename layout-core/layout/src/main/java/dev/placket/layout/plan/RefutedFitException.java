package dev.placket.layout.plan;

import dev.placket.layout.check.Breach;
import dev.placket.layout.fit.FitRequest;
import java.util.List;

/** An internal error: the solver returned a fit that breaks a rule of its request. */
public final class RefutedFitException extends IllegalStateException {
  private static final long serialVersionUID = 1;

  private final transient FitRequest request;
  private final transient List<Breach> breaches;

  RefutedFitException(FitRequest request, List<Breach> breaches) {
    super("the fit on sheet '" + request.sheet().name() + "' breaks its rules: " + breaches);
    this.request = request;
    this.breaches = List.copyOf(breaches);
  }

  /** The request, for a report of the error. */
  public FitRequest request() {
    return request;
  }

  /** The broken rules, one or more. */
  public List<Breach> breaches() {
    return breaches;
  }
}
