package dev.placket.layout.check;

import dev.placket.layout.units.Length;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers of the input read as the decimals they print, and their unit in the last place. */
final class Exact {
  /** Scales are rounded down to this many significant digits. */
  static final MathContext TWELVE_DOWN = new MathContext(12, RoundingMode.DOWN);

  private static final MathContext SIX = new MathContext(6);

  private Exact() {}

  static BigDecimal of(double number) {
    return BigDecimal.valueOf(number);
  }

  static BigDecimal of(Length length) {
    return BigDecimal.valueOf(length.pt());
  }

  /** Half of a decimal, which is a decimal again. */
  static BigDecimal half(BigDecimal number) {
    return number.multiply(new BigDecimal("0.5"));
  }

  /** One unit in the twelfth significant digit of a number above zero. */
  static BigDecimal unitInTwelfth(BigDecimal number) {
    int firstDigit = number.precision() - number.scale() - 1;
    return BigDecimal.ONE.scaleByPowerOfTen(firstDigit - 11);
  }

  /** A length for a message, short. */
  static String pt(BigDecimal points) {
    return points.round(SIX).stripTrailingZeros().toPlainString() + " pt";
  }

  static boolean above(BigDecimal a, BigDecimal b) {
    return a.compareTo(b) > 0;
  }
}
