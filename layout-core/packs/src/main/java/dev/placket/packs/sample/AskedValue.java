package dev.placket.packs.sample;

import dev.placket.packs.measure.GradedPoint;
import dev.placket.packs.measure.MeasureText;
import dev.placket.packs.measure.MeasureUnit;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * What is asked of one point in one size, in millimetres.
 *
 * @param value the length
 * @param plus how much larger a sample may be; null for no tolerance
 * @param minus how much smaller it may be, as a positive number; null for no tolerance
 */
public record AskedValue(BigDecimal value, @Nullable BigDecimal plus, @Nullable BigDecimal minus) {
  /**
   * Checks the tolerance.
   *
   * @throws IllegalArgumentException if it is negative
   */
  public AskedValue {
    if (plus != null && plus.signum() < 0 || minus != null && minus.signum() < 0) {
      throw new IllegalArgumentException("a tolerance of +" + plus + " -" + minus);
    }
  }

  /**
   * What a list asks.
   *
   * @throws IllegalArgumentException if the point has no value for the size
   */
  public static AskedValue of(GradedPoint point, String size) {
    BigDecimal value = point.values().get(size);
    if (value == null) {
      throw new IllegalArgumentException("no value of " + point.point().code() + " for " + size);
    }
    return new AskedValue(value, point.point().plus(), point.point().minus());
  }

  /** The value as it is typed in a file. */
  public String valueText(MeasureUnit unit) {
    return MeasureText.of(value, unit);
  }

  /** The tolerance as it is typed in a file, as in 0.5 or +1 -0.5; empty for none. */
  public String toleranceText(MeasureUnit unit) {
    if (plus == null || minus == null) {
      return "";
    }
    String up = MeasureText.of(plus, unit);
    return plus.compareTo(minus) == 0 ? up : "+" + up + " -" + MeasureText.of(minus, unit);
  }

  /** The tolerance towards a difference: that above for a positive one, else that below. */
  public @Nullable BigDecimal limit(BigDecimal difference) {
    return difference.signum() > 0 ? plus : minus;
  }
}
