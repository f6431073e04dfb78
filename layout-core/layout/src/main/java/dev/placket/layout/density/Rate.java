package dev.placket.layout.density;

import java.math.BigInteger;

/**
 * So many pixels for a unit of length, exactly as a picture file states it: a whole number or a
 * fraction, never rounded.
 *
 * @param numerator above zero, in lowest terms with {@code denominator}
 * @param denominator above zero
 * @param unit the length that holds them
 */
public record Rate(long numerator, long denominator, Unit unit) {
  /** The unit of length that a file counts its pixels by. */
  public enum Unit {
    /** One inch, as in JFIF units 1 and Exif resolution unit 2. */
    INCH(1, 1),
    /** One centimetre, as in JFIF units 2 and Exif resolution unit 3. */
    CENTIMETRE(254, 100),
    /** One metre, as in PNG pHYs unit 1; an inch is exactly 0.0254 m. */
    METRE(254, 10_000);

    private final double inchNumerator;
    private final double inchDenominator;

    Unit(double inchNumerator, double inchDenominator) {
      this.inchNumerator = inchNumerator;
      this.inchDenominator = inchDenominator;
    }
  }

  /**
   * Brings the fraction to lowest terms.
   *
   * @throws IllegalArgumentException with both numbers, if either is not above zero
   */
  public Rate {
    if (numerator <= 0 || denominator <= 0) {
      throw new IllegalArgumentException(
          "a density is above zero, not " + numerator + "/" + denominator);
    }
    long common =
        BigInteger.valueOf(numerator).gcd(BigInteger.valueOf(denominator)).longValueExact();
    numerator /= common;
    denominator /= common;
  }

  /** So many pixels to the inch. */
  public static Rate perInch(long pixels) {
    return new Rate(pixels, 1, Unit.INCH);
  }

  /** So many pixels to the centimetre. */
  public static Rate perCentimetre(long pixels) {
    return new Rate(pixels, 1, Unit.CENTIMETRE);
  }

  /** So many pixels to the metre. */
  public static Rate perMetre(long pixels) {
    return new Rate(pixels, 1, Unit.METRE);
  }

  /** Pixels per inch; the nearest double to the exact value, within a few last places. */
  public double perInch() {
    return (numerator * unit.inchNumerator) / (denominator * unit.inchDenominator);
  }

  /** Pixels per metre; the nearest double to the exact value, within a few last places. */
  public double perMetre() {
    return switch (unit) {
      case METRE -> (double) numerator / denominator;
      case CENTIMETRE -> 100.0 * numerator / denominator;
      case INCH -> numerator * 10_000.0 / (denominator * 254.0);
    };
  }
}
