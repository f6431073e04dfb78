package dev.placket.packs.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * How lengths are shown: in a unit, as multiples of a step.
 *
 * @param unit the unit
 * @param step in the unit, above zero; for inches a half, quarter, … sixty-fourth, or whole inches
 */
public record Rounding(MeasureUnit unit, BigDecimal step) {
  /** Negative numbers are written with a minus sign, not a hyphen. */
  private static final String MINUS = "\u2212";

  private static final int FINEST = 64;

  private static final MathContext EXACT = new MathContext(40);

  /** What is left of a tolerance, as a share, when it is rounded. */
  private static final BigDecimal MOST_KEPT = new BigDecimal("0.8");

  /**
   * Checks the step.
   *
   * @throws IllegalArgumentException if it is not above zero, or no such fraction of an inch
   */
  public Rounding {
    boolean fits =
        unit != MeasureUnit.INCH
            || step.multiply(BigDecimal.valueOf(FINEST)).stripTrailingZeros().scale() <= 0;
    if (step.signum() <= 0 || !fits) {
      throw new IllegalArgumentException("steps of " + step + " " + unit.sign());
    }
  }

  /**
   * Fine enough for what is typed: a thousandth of a centimetre or millimetre, a 64th of an inch.
   */
  public static Rounding fine(MeasureUnit unit) {
    return new Rounding(
        unit, unit == MeasureUnit.INCH ? new BigDecimal("0.015625") : new BigDecimal("0.001"));
  }

  /** A tenth of a centimetre, a millimetre, an eighth of an inch. */
  public static Rounding usual(MeasureUnit unit) {
    return new Rounding(
        unit,
        switch (unit) {
          case CM -> new BigDecimal("0.1");
          case MM -> BigDecimal.ONE;
          case INCH -> new BigDecimal("0.125");
        });
  }

  /**
   * A step as it is typed: a number, or in inches a fraction, too.
   *
   * @throws IllegalArgumentException if it is neither
   */
  public static BigDecimal step(String text, MeasureUnit unit) {
    return MeasureText.parse(text, unit).divide(unit.length());
  }

  /** A length in the unit, to forty digits: all of those that the figures of a list have. */
  public BigDecimal exact(BigDecimal mm) {
    return mm.divide(unit.length(), EXACT);
  }

  /** A length in the unit, rounded to the nearest step, halves away from zero. */
  public BigDecimal nearest(BigDecimal mm) {
    return steps(mm, RoundingMode.HALF_UP);
  }

  /** The same, rounded towards zero: for tolerances, which are never widened. */
  public BigDecimal within(BigDecimal mm) {
    return steps(mm, RoundingMode.DOWN);
  }

  /**
   * A tolerance, rounded towards zero. Where the step would take away more than a fifth of it, it
   * is rounded to a finer one.
   */
  public BigDecimal tolerance(BigDecimal mm) {
    BigDecimal most = mm.abs().multiply(MOST_KEPT);
    Rounding at = this;
    while (at.unit.mm(at.within(mm)).abs().compareTo(most) < 0
        && at.step.compareTo(fine(unit).step) > 0) {
      at = new Rounding(unit, at.finer());
    }
    return at.within(mm);
  }

  /**
   * A difference as it is printed beside its tolerance: rounded to the nearest step, unless it
   * would then look in where it is out, or out where it is in. One that is out is rounded to a
   * finer step or, at the finest, away from zero; one that is in is rounded towards zero.
   *
   * @param mm measured less asked
   * @param limit the tolerance towards its sign, zero or more
   */
  public BigDecimal difference(BigDecimal mm, BigDecimal limit) {
    BigDecimal printed = tolerance(limit);
    BigDecimal nearest = nearest(mm);
    if (mm.abs().compareTo(limit) <= 0) {
      return nearest.abs().compareTo(printed) > 0 ? within(mm) : nearest;
    }
    Rounding at = this;
    while (nearest.abs().compareTo(printed) <= 0 && at.step.compareTo(fine(unit).step) > 0) {
      at = new Rounding(unit, at.finer());
      nearest = at.nearest(mm);
    }
    return nearest.abs().compareTo(printed) > 0 ? nearest : at.steps(mm, RoundingMode.UP);
  }

  private BigDecimal finer() {
    BigDecimal next =
        unit == MeasureUnit.INCH
            ? step.divide(BigDecimal.valueOf(2))
            : step.min(BigDecimal.ONE).scaleByPowerOfTen(-1);
    return next.max(fine(unit).step);
  }

  private BigDecimal steps(BigDecimal mm, RoundingMode mode) {
    // The quotient of two decimals need not be one, so that it is rounded at once.
    BigDecimal size = step.multiply(unit.length());
    return mm.divide(size, 0, mode).multiply(step);
  }

  /** The text of a rounded length: a decimal, or inches with a fraction in its lowest terms. */
  public String text(BigDecimal rounded) {
    String sign = rounded.signum() < 0 ? MINUS : "";
    BigDecimal size = rounded.abs();
    if (unit != MeasureUnit.INCH) {
      return sign + plain(size);
    }
    BigInteger whole = size.toBigInteger();
    BigInteger parts =
        size.subtract(new BigDecimal(whole))
            .multiply(BigDecimal.valueOf(FINEST))
            .toBigIntegerExact();
    if (parts.signum() == 0) {
      return sign + whole;
    }
    BigInteger common = parts.gcd(BigInteger.valueOf(FINEST));
    String fraction = parts.divide(common) + "/" + BigInteger.valueOf(FINEST).divide(common);
    return sign + (whole.signum() == 0 ? fraction : whole + " " + fraction);
  }

  private static String plain(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }
}
