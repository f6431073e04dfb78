package dev.placket.packs.sample;

import dev.placket.packs.measure.Rounding;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * One point of a sample with its verdict.
 *
 * @param asked what was asked in its round
 * @param value what was measured
 * @param trend how it stands against the round before
 */
public record JudgedPoint(AskedValue asked, SampleValue value, Trend trend) {
  /** How the measured value stands against the asked one. */
  public Verdict verdict() {
    return Verdict.of(value.measured(), asked);
  }

  /** Measured less asked, exactly, in millimetres; null where nothing was measured. */
  public @Nullable BigDecimal difference() {
    BigDecimal measured = value.measured();
    return measured == null ? null : measured.subtract(asked.value());
  }

  /**
   * The difference as it is printed, with its sign; empty where nothing was measured.
   *
   * @param rounding how lengths of the sheet are shown
   */
  public String differenceText(Rounding rounding) {
    BigDecimal difference = difference();
    if (difference == null) {
      return "";
    }
    BigDecimal limit = asked.limit(difference);
    BigDecimal shown =
        limit == null || difference.signum() == 0
            ? rounding.nearest(difference)
            : rounding.difference(difference, limit);
    return (shown.signum() > 0 ? "+" : "") + rounding.text(shown);
  }
}
