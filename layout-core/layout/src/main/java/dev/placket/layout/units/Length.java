package dev.placket.layout.units;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A length on paper, kept in points of 1/72 inch.
 *
 * <p>Factories name the unit; any finite value is allowed, also a negative one. Conversions follow
 * CSS Values 4, 5.2 (1in = 2.54cm = 72pt) and ISO/IEC 29500 (914,400 EMU to the inch).
 *
 * @param pt the length in points
 */
public record Length(double pt) implements Comparable<Length> {
  /** No length. */
  public static final Length ZERO = new Length(0);

  private static final double POINTS_PER_INCH = 72;
  private static final double MM_PER_INCH = 25.4;
  private static final int EMU_PER_POINT = 12_700;
  private static final Pattern FORM =
      Pattern.compile("\\s*([+-]?[0-9]*\\.?[0-9]+)\\s*(mm|cm|in|pt)\\s*");

  /**
   * Checks that the value is finite.
   *
   * @throws IllegalArgumentException if it is not
   */
  public Length {
    if (!Double.isFinite(pt)) {
      throw new IllegalArgumentException("a length is a finite number, not " + pt);
    }
  }

  /** A length in points (1/72 inch). */
  public static Length pt(double points) {
    return new Length(points);
  }

  /** A length in millimetres. */
  public static Length mm(double millimetres) {
    return new Length(millimetres * POINTS_PER_INCH / MM_PER_INCH);
  }

  /** A length in centimetres. */
  public static Length cm(double centimetres) {
    return mm(centimetres * 10);
  }

  /** A length in inches. */
  public static Length in(double inches) {
    return new Length(inches * POINTS_PER_INCH);
  }

  /** A length in English Metric Units, of which an inch holds 914,400. */
  public static Length emu(long emu) {
    return new Length((double) emu / EMU_PER_POINT);
  }

  /**
   * Reads a number with its unit, as in {@code 12.5mm}, {@code 1 in}; units are {@code mm cm in
   * pt}.
   *
   * @throws IllegalArgumentException naming the text, if it has another form
   */
  public static Length parse(String text) {
    Matcher m = FORM.matcher(text.toLowerCase(Locale.ROOT));
    if (!m.matches()) {
      throw new IllegalArgumentException(
          "'" + text + "' is no length: write a number and mm, cm, in or pt, as in 12mm");
    }
    double number = Double.parseDouble(m.group(1));
    return switch (m.group(2)) {
      case "mm" -> mm(number);
      case "cm" -> cm(number);
      case "in" -> in(number);
      default -> pt(number);
    };
  }

  /** This length in millimetres. */
  public double mm() {
    return pt * MM_PER_INCH / POINTS_PER_INCH;
  }

  /** This length in inches. */
  public double in() {
    return pt / POINTS_PER_INCH;
  }

  /** This length in whole English Metric Units, rounded to the nearest. */
  public long emu() {
    return Math.round(pt * EMU_PER_POINT);
  }

  /** This and another length added. */
  public Length plus(Length other) {
    return new Length(pt + other.pt);
  }

  /** This length multiplied. */
  public Length times(double factor) {
    return new Length(pt * factor);
  }

  @Override
  public int compareTo(Length other) {
    return Double.compare(pt, other.pt);
  }
}
