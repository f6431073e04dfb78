package dev.placket.packs.sample;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * Measured values at one point of a sample, in millimetres, with decision and comment.
 *
 * @param code the point's
 * @param factory what the factory measured; null if it gave nothing
 * @param ours what the buyer measured; null for not measured
 * @param revised what is to be asked from now on; null for no change
 * @param decision what is decided on it, as in correct to the list; empty for nothing
 * @param comment a remark on the point; empty for none
 */
public record SampleValue(
    String code,
    @Nullable BigDecimal factory,
    @Nullable BigDecimal ours,
    @Nullable BigDecimal revised,
    String decision,
    String comment) {
  /** Measured values alone. */
  public static SampleValue of(
      String code, @Nullable BigDecimal factory, @Nullable BigDecimal ours) {
    return new SampleValue(code, factory, ours, null, "", "");
  }

  /** The value that is judged: ours, else the factory's; null where neither was given. */
  public @Nullable BigDecimal measured() {
    return ours == null ? factory : ours;
  }
}
