package dev.placket.packs.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/** Numbers as {@code fit.json} has them: plain, and rounded to what is exact of them. */
public final class Numbers {
  public static final int DECIMALS = 6;

  private Numbers() {}

  /** A number that may be missing. */
  public static void writeOptional(JsonGenerator json, String field, @Nullable Double value)
      throws IOException {
    if (value == null) {
      json.writeNullField(field);
    } else {
      json.writeNumberField(field, value);
    }
  }

  /** A length in points, or another number that is no more exact. */
  public static void write(JsonGenerator json, String field, double value) throws IOException {
    json.writeNumberField(field, rounded(value, DECIMALS));
  }

  /** The value rounded half to even, to so many decimals, without zeros at the end. */
  public static BigDecimal rounded(double value, int decimals) {
    return plain(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN));
  }

  /** The value rounded half to even, to {@value #DECIMALS} decimals, without zeros at the end. */
  public static BigDecimal rounded(BigDecimal value) {
    return plain(value.setScale(DECIMALS, RoundingMode.HALF_EVEN));
  }

  private static BigDecimal plain(BigDecimal value) {
    BigDecimal stripped = value.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }
}
