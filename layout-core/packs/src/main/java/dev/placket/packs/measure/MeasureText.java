package dev.placket.packs.measure;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lengths as they are typed: {@code 59.5}, {@code -0.5}, and in inches {@code 23 7/16}. */
public final class MeasureText {
  private static final Pattern FORM =
      Pattern.compile(
          "([+\\-\u2212]?) ?(?:(\\d{1,6}(?:\\.\\d{1,6})?|\\.\\d{1,6})|(?:(\\d{1,6}) )?(\\d{1,3})/(\\d{1,3}))"
              + "(?: ?(cm|mm|in))?");

  /** The finest fraction of an inch. */
  private static final int PARTS = 64;

  private MeasureText() {}

  /**
   * A typed length in millimetres, exactly.
   *
   * @param text a decimal number, or in inches a fraction of 2, 4, 8, 16, 32 or 64, whole inches
   *     before it; the sign of the unit may follow
   * @param unit the unit of the list
   * @throws IllegalArgumentException saying what the text is instead
   */
  public static BigDecimal parse(String text, MeasureUnit unit) {
    Matcher m = FORM.matcher(text.strip().replace('\u00a0', ' '));
    if (!m.matches()) {
      throw new IllegalArgumentException("'" + text.strip() + "', which is no length");
    }
    if (m.group(6) != null && !m.group(6).equals(unit.sign())) {
      throw new IllegalArgumentException("'" + text.strip() + "' in a list in " + unit.sign());
    }
    BigDecimal number = m.group(2) != null ? new BigDecimal(m.group(2)) : fraction(m, unit);
    return unit.mm(m.group(1).isEmpty() || m.group(1).equals("+") ? number : number.negate());
  }

  /**
   * A length as it is typed: it parses to the same one.
   *
   * @param mm in millimetres: an exact number of the unit
   * @throws ArithmeticException if it is none
   */
  public static String of(BigDecimal mm, MeasureUnit unit) {
    BigDecimal number = mm.divide(unit.length());
    BigDecimal parts = number.multiply(BigDecimal.valueOf(PARTS));
    return unit == MeasureUnit.INCH && parts.stripTrailingZeros().scale() <= 0
        ? Rounding.fine(unit).text(number)
        : number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }

  private static BigDecimal fraction(Matcher m, MeasureUnit unit) {
    int over = Integer.parseInt(m.group(4));
    int under = Integer.parseInt(m.group(5));
    boolean binary = under > 1 && under <= PARTS && Integer.bitCount(under) == 1;
    if (unit != MeasureUnit.INCH || !binary || over >= under) {
      throw new IllegalArgumentException("'" + m.group() + "', which is no fraction of an inch");
    }
    BigDecimal whole = m.group(3) == null ? BigDecimal.ZERO : new BigDecimal(m.group(3));
    return whole.add(new BigDecimal(over).divide(new BigDecimal(under)));
  }
}
