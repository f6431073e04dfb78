package dev.placket.pictures.css;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Numbers and lengths as CSS writes them (CSS Values 4). */
final class Lengths {
  static final String NUMBER = "[+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][+-]?[0-9]{1,3})?";
  private static final Pattern DIMENSION = Pattern.compile("(" + NUMBER + ")([A-Za-z]*|%)");

  private Lengths() {}

  /** A number and its unit, in small letters; no unit is "", and "%" is one. */
  record Dimension(double number, String unit) {}

  static @Nullable Dimension dimension(String text) {
    Matcher m = DIMENSION.matcher(text);
    if (!m.matches()) {
      return null;
    }
    double n = Double.parseDouble(m.group(1));
    return Double.isFinite(n) ? new Dimension(n, m.group(2).toLowerCase(Locale.ROOT)) : null;
  }

  static @Nullable Double number(String text) {
    Dimension d = dimension(text);
    return d == null || !d.unit.isEmpty() ? null : (Double) d.number;
  }

  /** A number that may be a share: 50% is 0.5. */
  static @Nullable Double share(String text) {
    Dimension d = dimension(text);
    if (d == null) {
      return null;
    }
    return switch (d.unit) {
      case "" -> d.number;
      case "%" -> d.number / 100;
      default -> null;
    };
  }

  /** An absolute length in pixels, or null. */
  static @Nullable Double pixels(String text) {
    Dimension d = dimension(text);
    if (d == null) {
      return null;
    }
    double one = perUnit(d.unit);
    return one > 0 ? (Double) (d.number * one) : d.number == 0 && d.unit.isEmpty() ? 0.0 : null;
  }

  /** CSS Values 4, 6.2: an inch has 96 px, 72 pt, 6 pc, 2.54 cm, and a centimetre 40 Q. */
  static double perUnit(String unit) {
    return switch (unit) {
      case "px" -> 1;
      case "in" -> 96;
      case "cm" -> 96 / 2.54;
      case "mm" -> 96 / 25.4;
      case "q" -> 96 / 101.6;
      case "pt" -> 96 / 72.0;
      case "pc" -> 16;
      default -> 0;
    };
  }

  /** Degrees of an angle, or null; a plain number counts as degrees. */
  static @Nullable Double degrees(String text) {
    Dimension d = dimension(text);
    if (d == null) {
      return null;
    }
    return switch (d.unit) {
      case "", "deg" -> d.number;
      case "rad" -> Math.toDegrees(d.number);
      case "grad" -> d.number * 0.9;
      case "turn" -> d.number * 360;
      default -> null;
    };
  }

  /** A number without an exponent, since older readers of styles know none. */
  static String plain(double n) {
    if (n == Math.rint(n) && Math.abs(n) < 1e15) {
      return Long.toString((long) n);
    }
    BigDecimal twelveDigits = new BigDecimal(n).round(new MathContext(12));
    return twelveDigits.stripTrailingZeros().toPlainString();
  }
}
