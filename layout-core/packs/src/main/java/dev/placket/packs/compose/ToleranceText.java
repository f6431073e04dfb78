package dev.placket.packs.compose;

import dev.placket.packs.measure.MeasureText;
import dev.placket.packs.measure.MeasureUnit;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A tolerance as it is written: one number for both ways, or each with its sign.
 *
 * @param plus how much larger a sample may be; null for no tolerance
 * @param minus how much smaller it may be, as a positive number; null for no tolerance
 */
record ToleranceText(@Nullable BigDecimal plus, @Nullable BigDecimal minus) {
  /** None. */
  static final ToleranceText NONE = new ToleranceText(null, null);

  /**
   * The tolerance in millimetres; none for a blank text.
   *
   * @throws IllegalArgumentException saying what of the text is no tolerance
   */
  static ToleranceText parse(String text, MeasureUnit unit) {
    if (text.isBlank()) {
      return NONE;
    }
    String[] parts = text.strip().split("(?<=[^ ]) +(?=[-+\u2212])");
    BigDecimal first = MeasureText.parse(parts[0].replace("\u00b1", ""), unit);
    if (parts.length == 1 && first.signum() >= 0 && !text.strip().startsWith("+")) {
      return new ToleranceText(first, first);
    }
    BigDecimal second = parts.length == 2 ? MeasureText.parse(parts[1], unit) : null;
    if (second == null || first.signum() < 0 || second.signum() > 0) {
      throw new IllegalArgumentException(
          "the tolerance '" + text.strip() + "', not as in 0.5 or +1 -0.5");
    }
    return new ToleranceText(first, second.negate());
  }
}
