package dev.placket.layout.plan;

import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Outcome;
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
}
