package dev.placket.packs.measure;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A unit in which garments are measured. */
public enum MeasureUnit {
  /** Centimetres. */
  CM("cm", "10"),
  /** Millimetres. */
  MM("mm", "1"),
  /** Inches of exactly 25.4 mm (ISO 80000-3). */
  INCH("in", "25.4");

  private final String sign;
  private final BigDecimal length;

  MeasureUnit(String sign, String length) {
    this.sign = sign;
    this.length = new BigDecimal(length);
  }

  /** How it is written: {@code cm}, {@code mm} or {@code in}. */
  public String sign() {
    return sign;
  }

  /** Whether its figures have fractions, which a spreadsheet takes for dates. */
  public boolean isTypedAsText() {
    return this == INCH;
  }

  /** A number of these in millimetres, exactly. */
  BigDecimal mm(BigDecimal number) {
    return number.multiply(length);
  }

  /** How many millimetres one is. */
  BigDecimal length() {
    return length;
  }

  /** The unit with this sign. */
  public static Optional<MeasureUnit> of(String sign) {
    return Stream.of(values()).filter(u -> u.sign.equals(sign)).findFirst();
  }

  /** All signs. */
  public static List<String> signs() {
    return Stream.of(values()).map(MeasureUnit::sign).toList();
  }
}
