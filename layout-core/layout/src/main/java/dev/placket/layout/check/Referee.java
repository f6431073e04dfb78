package dev.placket.layout.check;

import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import java.util.List;

/**
 * Recomputes every hard rule of a fit from its request and its placements, and calls nothing of the
 * solver.
 *
 * <p>Every double of the request is read as the decimal it prints; all sums and comparisons are
 * exact and nothing is forgiven. Only what the rounding of an answer allows is allowed: a held edge
 * is rounded to 1e-9 pt, a scale down to twelve significant digits. A placement has one scale for
 * both axes, so the aspect cannot be broken.
 *
 * <p>The names in {@link Breach#rule()}: {@code placed once}, {@code scale}, {@code rounding},
 * {@code margins}, {@code window}, {@code clearance}, {@code gap}, {@code scale group}, {@code
 * common scale}, {@code least size}, {@code greatest size}, {@code capped}, {@code front largest},
 * {@code details under views}, {@code front before back}, {@code listed in order}, {@code held},
 * {@code proof}.
 */
public final class Referee {
  private Referee() {}

  /**
   * The hard rules that the fit breaks, empty if it keeps them all. O(n² + n × (cells of the grid +
   * labelled cells)) exact comparisons for n flats.
   *
   * @param request what was asked
   * @param fit the answer to be judged, from wherever it comes
   */
  public static List<Breach> check(FitRequest request, Fit fit) {
    Breaches breaches = new Breaches();
    List<Placed> placed = RollCall.take(request.flats(), fit, breaches);
    RoomRules.check(request.sheet(), placed, breaches);
    SpacingRules.check(request, placed, breaches);
    GroupRule.check(placed, breaches);
    SizeRules.check(placed, breaches);
    FrontRules.check(request, placed, breaches);
    ListRule.check(request, placed, breaches);
    HeldRules.check(placed, breaches);
    if (ProofRules.check(fit.proof(), breaches)) {
      CommonScale.check(request, fit.proof().scale(), placed, breaches);
    }
    return breaches.all();
  }
}
