package dev.placket.layout.solve.search;

import dev.placket.layout.solve.model.Arrangement;
import dev.placket.layout.solve.stretch.StretchOrder;
import org.jspecify.annotations.Nullable;

/** The best arrangement known and the least bound known, for one plan. */
public final class Best {
  /** The search looks for scales above the best by this share; what is closer counts as equal. */
  static final double STEP = 4e-7;

  private final StretchOrder stretch;
  private final double low;
  private @Nullable Arrangement arrangement;
  private double bound;

  /**
   * Knows nothing yet.
   *
   * @param low no t below this is wanted
   * @param bound no t above this is possible
   */
  public Best(StretchOrder stretch, double low, double bound) {
    this.stretch = stretch;
    this.low = low;
    this.bound = bound;
  }

  /** Takes an arrangement, stretched, if it is better; true if it was. */
  boolean offer(Arrangement found) {
    Arrangement stretched = stretch.stretch(found, bound);
    if (arrangement == null || stretched.t() > arrangement.t()) {
      arrangement = stretched;
      return true;
    }
    return false;
  }

  /** It is known that no t above this is possible. */
  void prove(double limit) {
    bound = Math.max(scale(), Math.min(bound, limit));
  }

  /** Whether it is known that nothing fits at all. */
  public boolean refuted() {
    return arrangement == null && bound <= low;
  }

  /** Whether looking on is in vain, since the bound alone refutes every t that is wanted. */
  boolean hopeless() {
    return arrangement == null && (bound == 0 || bound < low);
  }

  /** The best arrangement; null if there is none. */
  public @Nullable Arrangement arrangement() {
    return arrangement;
  }

  /** The best t; 0 if there is none. */
  double scale() {
    return arrangement == null ? 0 : arrangement.t();
  }

  /** No arrangement has a larger t. */
  public double bound() {
    return bound;
  }

  /** The t that the next arrangement has to reach. */
  double threshold() {
    return arrangement == null ? low : Math.max(low, arrangement.t() * (1 + STEP));
  }

  /** Whether nothing more can be won. */
  boolean proven() {
    return threshold() >= bound && arrangement != null;
  }
}
