package dev.placket.pictures.css;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Works out {@code calc()}, {@code min()}, {@code max()} and {@code clamp()} (CSS Values 4, clause
 * 10) as far as that goes without knowing what surrounds an element: numbers, absolute lengths,
 * angles, and what has one unit throughout.
 */
final class Calc {
  private static final Pattern CALL =
      Pattern.compile("(?<![\\w-])(calc|min|max|clamp)\\(", Pattern.CASE_INSENSITIVE);
  private static final Pattern SUM = Pattern.compile("\\s[+-]\\s");
  private static final int DEEPEST = 32;

  private final PageSize page;

  private Calc(PageSize page) {
    this.page = page;
  }

  /** The value with each sum in it worked out, or null if one cannot be. */
  static @Nullable String folded(String value, PageSize page) {
    if (value.indexOf('(') < 0) {
      return value;
    }
    Calc calc = new Calc(page);
    StringBuilder out = new StringBuilder();
    int from = 0;
    Matcher m = CALL.matcher(value);
    while (m.find(from)) {
      int close = Scan.closed(value, m.end() - 1);
      Lengths.Dimension d = calc.value(value.substring(m.start(), close), 0);
      if (d == null || !Double.isFinite(d.number())) {
        return null;
      }
      out.append(value, from, m.start()).append(Lengths.plain(d.number())).append(d.unit());
      from = close;
      if (from >= value.length()) {
        break;
      }
    }
    return out.append(value.substring(from)).toString();
  }

  /** Pixels in a unit that depends on nothing but the drawing's size; NaN for others. */
  static double pixelsPer(String unit, PageSize v) {
    double absolute = Lengths.perUnit(unit);
    if (absolute > 0) {
      return absolute;
    }
    return switch (unit) {
      case "vw" -> v.width() / 100;
      case "vh" -> v.height() / 100;
      case "vmin" -> Math.min(v.width(), v.height()) / 100;
      case "vmax" -> Math.max(v.width(), v.height()) / 100;
      case "rem" -> 16;
      default -> Double.NaN;
    };
  }

  private Lengths.@Nullable Dimension sum(String text, int depth) {
    if (depth > DEEPEST) {
      return null;
    }
    Lengths.Dimension total = null;
    char sign = '+';
    int from = 0;
    while (from <= text.length()) {
      int to = nextSum(text, from);
      Lengths.Dimension term = product(text.substring(from, to).strip(), depth);
      if (term == null) {
        return null;
      }
      double n = sign == '-' ? -term.number() : term.number();
      if (total == null) {
        total = new Lengths.Dimension(n, term.unit());
      } else if (total.unit().equals(term.unit())) {
        total = new Lengths.Dimension(total.number() + n, term.unit());
      } else {
        return null;
      }
      if (to >= text.length()) {
        return total;
      }
      sign = text.charAt(to);
      from = to + 1;
    }
    return null;
  }

  /** The place of the next plus or minus with spaces around it, or the end. */
  private static int nextSum(String text, int from) {
    int at = Scan.end(text, from, "+-");
    while (at < text.length()) {
      if (at > 0 && SUM.matcher(text).region(at - 1, text.length()).lookingAt()) {
        return at;
      }
      at = Scan.end(text, at + 1, "+-");
    }
    return at;
  }

  private Lengths.@Nullable Dimension product(String text, int depth) {
    Lengths.Dimension result = null;
    char sign = '*';
    int from = 0;
    while (true) {
      int to = Scan.end(text, from, "*/");
      Lengths.Dimension factor = value(text.substring(from, to).strip(), depth + 1);
      if (factor == null) {
        return null;
      }
      result = result == null ? factor : times(result, factor, sign);
      if (result == null || to >= text.length()) {
        return result;
      }
      sign = text.charAt(to);
      from = to + 1;
    }
  }

  private static Lengths.@Nullable Dimension times(
      Lengths.Dimension a, Lengths.Dimension b, char sign) {
    if (sign == '/') {
      return b.unit().isEmpty() ? new Lengths.Dimension(a.number() / b.number(), a.unit()) : null;
    }
    if (!a.unit().isEmpty() && !b.unit().isEmpty()) {
      return null;
    }
    return new Lengths.Dimension(a.number() * b.number(), a.unit() + b.unit());
  }

  private Lengths.@Nullable Dimension value(String text, int depth) {
    if (text.startsWith("(") && Scan.closed(text, 0) == text.length() && text.endsWith(")")) {
      return sum(text.substring(1, text.length() - 1), depth + 1);
    }
    int open = text.indexOf('(');
    if (open > 0) {
      String name = text.substring(0, open).toLowerCase(Locale.ROOT);
      String inside = Scan.arguments(text, name);
      return inside == null ? null : call(name, Scan.split(inside, ","), depth);
    }
    Lengths.Dimension d = Lengths.dimension(text);
    if (d == null) {
      return null;
    }
    double pixels = pixelsPer(d.unit(), page);
    return Double.isNaN(pixels) ? d : new Lengths.Dimension(d.number() * pixels, "px");
  }

  private Lengths.@Nullable Dimension call(String name, List<String> arguments, int depth) {
    List<Double> numbers = new ArrayList<>();
    String unit = null;
    for (String argument : arguments) {
      Lengths.Dimension d = sum(argument, depth + 1);
      if (d == null || (unit != null && !unit.equals(d.unit()))) {
        return null;
      }
      unit = d.unit();
      numbers.add(d.number());
    }
    double first = numbers.get(0);
    String all = unit == null ? "" : unit;
    return switch (name) {
      case "calc" -> numbers.size() == 1 ? new Lengths.Dimension(first, all) : null;
      case "min" ->
          new Lengths.Dimension(numbers.stream().reduce(first, (a, b) -> Math.min(a, b)), all);
      case "max" ->
          new Lengths.Dimension(numbers.stream().reduce(first, (a, b) -> Math.max(a, b)), all);
      case "clamp" ->
          numbers.size() == 3
              ? new Lengths.Dimension(
                  Math.max(first, Math.min(numbers.get(1), numbers.get(2))), all)
              : null;
      default -> null;
    };
  }
}
