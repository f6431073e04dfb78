package dev.placket.layout.solve;

import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.OrderStep;
import dev.placket.layout.flat.Targets;
import dev.placket.layout.solve.look.Look;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * The better of two fits in order: the one that keeps the earlier wish, else the one with the
 * larger views, else the one with the larger other flats, else the better looking one.
 *
 * <p>Sizes within a fiftieth of one another count as equal: nobody sees the difference.
 */
final class CompareFits {
  private static final double SEEN = 1.02;

  private CompareFits() {}

  /** The best of one or more fits; of equals the first. */
  static Fit best(FitRequest request, List<Fit> fits) {
    Fit best = fits.get(0);
    for (Fit fit : fits.subList(1, fits.size())) {
      best = better(request, fit, best) ? fit : best;
    }
    return best;
  }

  private static boolean better(FitRequest request, Fit a, Fit b) {
    for (int k = 0; k < Math.min(a.order().size(), b.order().size()); k++) {
      OrderStep its = a.order().get(k);
      if (its.kept() != b.order().get(k).kept()) {
        return its.kept();
      }
    }
    for (boolean views : new boolean[] {true, false}) {
      IntPredicate which = i -> request.flats().get(i).role().isView() == views;
      double sizeA = least(request, a, which);
      double sizeB = least(request, b, which);
      if (sizeA > sizeB * SEEN || sizeB > sizeA * SEEN) {
        return sizeA > sizeB;
      }
    }
    return Look.of(request, a).order() > Look.of(request, b).order();
  }

  /** The least scale over target of some flats; infinite for none. */
  private static double least(FitRequest request, Fit fit, IntPredicate which) {
    double[] targets = Targets.scales(request.flats());
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < targets.length; i++) {
      if (which.test(i)) {
        least = Math.min(least, fit.placements().get(i).scale().doubleValue() / targets[i]);
      }
    }
    return least;
  }
}
