package dev.placket.layout.solve.model;

import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Surround;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Mends the one case in which a footprint does not only grow with t: a held left edge under a
 * caption wider than the ink. The caption is centred, so as the ink grows the footprint's left edge
 * moves inwards; what bars a small t need not bar a larger one.
 *
 * <p>The range of t is split where such ink outgrows its caption. Above, all is as usual. Below, in
 * short ranges, the footprint is taken as wide as it is at the low end: what then fits, fits; but
 * that nothing fits proves nothing, and the bound stays at the range's high end.
 */
final class HeldUnderCaption {
  private static final double SHORTER = 0.8;
  private static final int RANGES = 12;
  private static final double FAR = 1e9;

  private final Model model;

  HeldUnderCaption(Model model) {
    this.model = model;
  }

  /** The model for each of these ranges, split where needed; the highest first. */
  List<Model> split(List<double[]> ranges) {
    List<Model> models = new ArrayList<>();
    for (double[] range : ranges) {
      if (isAny()) {
        split(range, models);
      } else {
        models.add(model.within(range, model.aside, true));
      }
    }
    return models;
  }

  private boolean isAny() {
    return model.flats.stream().anyMatch(HeldUnderCaption::is);
  }

  private static boolean is(Flat f) {
    return f.held().left() != null && f.surround().leastWidth().pt() > 0;
  }

  private void split(double[] range, List<Model> models) {
    double top = range[1];
    double low = settled(range);
    for (int k = 0; ; k++) {
      double[] asides = asides(low);
      boolean exact = Arrays.equals(asides, asides(Math.min(top, FAR)));
      models.add(model.within(new double[] {low, top}, asides, exact));
      if (low <= range[0]) {
        return;
      }
      top = low;
      low = k < RANGES ? Math.max(range[0], top * SHORTER) : range[0];
    }
  }

  /** The least t of the range from which on no such caption reaches any less far. */
  private double settled(double[] range) {
    double[] last = asides(Math.min(range[1], FAR));
    double low = range[0];
    double high = Math.min(range[1], FAR);
    while (high - low > 1e-12 * high) {
      double mid = (low + high) / 2;
      if (mid <= low || mid >= high) {
        break;
      }
      if (Arrays.equals(last, asides(mid))) {
        high = mid;
      } else {
        low = mid;
      }
    }
    return Arrays.equals(last, asides(range[0])) ? range[0] : high;
  }

  private double[] asides(double t) {
    double[] asides = new double[model.n];
    model.scales.at(t);
    for (int i = 0; i < model.n; i++) {
      Flat f = model.flats.get(i);
      Surround s = f.surround();
      double scale = model.scales.value[model.scales.classOf[i]] * model.scales.ratio[i];
      double spare = s.leastWidth().pt() - scale * f.ink().width() - s.left().pt() - s.right().pt();
      asides[i] = is(f) ? Math.max(0, spare / 2) : Double.NaN;
    }
    return asides;
  }
}
