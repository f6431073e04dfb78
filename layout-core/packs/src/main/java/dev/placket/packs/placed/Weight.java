package dev.placket.packs.placed;

import dev.placket.packs.refusal.PackSetting;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.prepare.WeightPlan;

/** The maximum size of a PDF or of all copies, in million bytes. */
public final class Weight {
  private static final double MILLION = 1e6;

  /** The default. */
  public static final double DEFAULT = WeightPlan.DEFAULT_LIMIT / MILLION;

  private Weight() {}

  /**
   * Returns the maximum in bytes.
   *
   * @throws Refusal unless it is a number above zero
   */
  public static long bytes(double millions) throws Refusal {
    if (!(millions > 0) || Double.isInfinite(millions)) {
      throw Refusal.input(
          Fault.setting(PackSetting.MAXIMUM_SIZE, millions, "is not a size")
              .remedy("give a number of million bytes above zero, as in 7"));
    }
    return Math.max(1, Math.round(millions * MILLION));
  }
}
