package dev.placket.packs.placed;

import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.prepare.WeightPlan;

/** The option {@code --weight}, in million bytes. */
public final class Weight {
  private static final double MILLION = 1e6;

  /** What is kept if nothing is said. */
  public static final double DEFAULT = WeightPlan.DEFAULT_LIMIT / MILLION;

  private Weight() {}

  /**
   * The most bytes that were asked for.
   *
   * @throws Refusal unless it is a number above zero
   */
  public static long bytes(double millions) throws Refusal {
    if (!(millions > 0) || Double.isInfinite(millions)) {
      throw Refusal.input("--weight " + millions + ": a weight is above zero; 7 is usual.");
    }
    return Math.max(1, Math.round(millions * MILLION));
  }
}
