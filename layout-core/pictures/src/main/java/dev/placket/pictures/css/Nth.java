package dev.placket.pictures.css;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The pseudo-classes that count among siblings: every {@code step}th from {@code offset} on (CSS
 * Syntax 3, clause 6).
 *
 * @param last whether it counts from the end
 * @param type whether it counts only what has the same type
 */
record Nth(boolean last, boolean type, int step, int offset) {
  private static final Pattern CALL =
      Pattern.compile("nth-(last-)?(child|of-type)\\(\\s*(.*?)\\s*\\)", Pattern.CASE_INSENSITIVE);
  private static final Pattern FORMULA =
      Pattern.compile("([+-]?\\d{0,6})n(?:\\s*([+-])\\s*(\\d{1,6}))?");
  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,6}");

  /** From a pseudo-class with its brackets; null if it is another or its formula is faulty. */
  static @Nullable Nth of(String pseudoClass) {
    Matcher call = CALL.matcher(pseudoClass);
    if (!call.matches()) {
      return null;
    }
    boolean last = call.group(1) != null;
    boolean type = call.group(2).equalsIgnoreCase("of-type");
    String formula = call.group(3).toLowerCase(Locale.ROOT);
    if (formula.equals("odd") || formula.equals("even")) {
      return new Nth(last, type, 2, formula.equals("odd") ? 1 : 0);
    }
    if (NUMBER.matcher(formula).matches()) {
      return new Nth(last, type, 0, Integer.parseInt(formula));
    }
    Matcher m = FORMULA.matcher(formula);
    if (!m.matches()) {
      return null;
    }
    int offset = m.group(3) == null ? 0 : Integer.parseInt(m.group(2) + m.group(3));
    return new Nth(last, type, step(m.group(1)), offset);
  }

  private static int step(String text) {
    return switch (text) {
      case "", "+" -> 1;
      case "-" -> -1;
      default -> Integer.parseInt(text);
    };
  }

  /** Whether a place, counted from 1, is one of those meant. */
  boolean has(int place) {
    int beyond = place - offset;
    return step == 0 ? beyond == 0 : beyond % step == 0 && beyond / step >= 0;
  }
}
