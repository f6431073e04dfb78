package dev.placket.demo.result;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/** Numbers as {@code fit.json} has them: plain, and rounded to what is exact of them. */
final class Numbers {
  static final int DECIMALS = 6;

  private Numbers() {}

  /** A number that may be missing. */
  static void writeOptional(JsonGenerator json, String field, @Nullable Double value)
      throws IOException {
    if (value == null) {
      json.writeNullField(field);
    } else {
      json.writeNumberField(field, value);
    }
  }

  /** A length in points, or another number that is no more exact. */
  static void write(JsonGenerator json, String field, double value) throws IOException {
    json.writeNumberField(field, rounded(value, DECIMALS));
  }

  static BigDecimal rounded(double value, int decimals) {
    return plain(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN));
  }

  static BigDecimal rounded(BigDecimal value) {
    return plain(value.setScale(DECIMALS, RoundingMode.HALF_EVEN));
  }

  private static BigDecimal plain(BigDecimal value) {
    BigDecimal stripped = value.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }
}
