package dev.placket.layout.plan;

import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Outcome;
import dev.placket.layout.fit.Proof;
import java.util.Map;

/**
 * What became of a request whose flats offer several footprints.
 *
 * @param request the request with the footprints chosen, which the outcome answers
 * @param shapes the number of each flat's footprint in its list, from 0
 * @param outcome the fit, whose bound is that of all footprints, or the conflict
 */
public record ShapedOutcome(FitRequest request, Map<String, Integer> shapes, Outcome outcome) {
  /** Copies the map. */
  public ShapedOutcome {
    shapes = Map.copyOf(shapes);
  }

  /**
   * This outcome where other footprints are offered as well.
   *
   * @param bound no choice of those has a larger common scale, in points to the drawing unit
   */
  public ShapedOutcome boundedBy(double bound) {
    if (!(outcome instanceof Fit fit) || bound <= fit.proof().bound()) {
      return this;
    }
    Proof own = fit.proof();
    Proof all = new Proof(own.scale(), bound, own.steps(), own.provenForOrder());
    return new ShapedOutcome(
        request, shapes, new Fit(fit.placements(), all, fit.order(), fit.levels()));
  }
}
