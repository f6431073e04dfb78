package dev.placket.packs.sample;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** How a measured value stands against what was asked. */
public enum Verdict {
  /** Within tolerance; a limit that is met exactly is within. */
  WITHIN,
  /** Larger than the tolerance allows. */
  OVER,
  /** Smaller than the tolerance allows. */
  UNDER,
  /** Measured, but the list states no tolerance that way. */
  NO_TOLERANCE,
  /** No value was given. */
  NOT_MEASURED;

  /**
   * The verdict on a value.
   *
   * @param measured in millimetres; null for not measured
   * @param asked what was asked
   */
  public static Verdict of(@Nullable BigDecimal measured, AskedValue asked) {
    if (measured == null) {
      return NOT_MEASURED;
    }
    BigDecimal difference = measured.subtract(asked.value());
    if (difference.signum() == 0) {
      return WITHIN;
    }
    BigDecimal limit = asked.limit(difference);
    if (limit == null) {
      return NO_TOLERANCE;
    }
    if (difference.abs().compareTo(limit) <= 0) {
      return WITHIN;
    }
    return difference.signum() > 0 ? OVER : UNDER;
  }

  /** Whether it is out of tolerance. */
  public boolean isOut() {
    return this == OVER || this == UNDER;
  }
}
