package dev.placket.packs.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/** Numbers as {@code fit.json} has them: plain, and rounded to what is exact of them. */
public final class Numbers {
  public static final int DECIMALS = 6;

  private static final int SIGNIFICANT = 15;

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

  /**
   * A computed number to 15 significant digits, without zeros at the end.
   *
   * <p>Every JDK gives the same digits, which is not true of the shortest ones: JDK-4511638 changed
   * how a double prints.
   *
   * @param mode how the last digit is rounded: a bound up, what was reached down
   */
  public static BigDecimal significant(double value, RoundingMode mode) {
    return plain(new BigDecimal(value).round(new MathContext(SIGNIFICANT, mode)));
  }

  private static BigDecimal plain(BigDecimal value) {
    BigDecimal stripped = value.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }
}
