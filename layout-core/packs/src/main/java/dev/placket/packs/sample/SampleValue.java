package dev.placket.packs.sample;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * What was measured at one point of a sample, in millimetres.
 *
 * @param code the point's
 * @param factory what the factory measured; null if it gave nothing
 * @param ours what the buyer measured; null for not measured
 * @param revised what is to be asked from now on; null for no change
 */
public record SampleValue(
    String code,
    @Nullable BigDecimal factory,
    @Nullable BigDecimal ours,
    @Nullable BigDecimal revised) {
  /** The value that is judged: ours, else the factory's; null where neither was given. */
  public @Nullable BigDecimal measured() {
    return ours == null ? factory : ours;
  }
}
