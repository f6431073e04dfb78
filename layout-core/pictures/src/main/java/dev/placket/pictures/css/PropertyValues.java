package dev.placket.pictures.css;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Which values a property takes, brought to a form that Batik's older style engine knows. What it
 * does not take drops its declaration alone.
 */
final class PropertyValues {
  private static final Pattern EXPONENT =
      Pattern.compile("(?<![\\w#.-])(" + Lengths.NUMBER + ")(?<=[eE][+-]?[0-9]{1,3})(?![0-9.])");
  private static final Pattern LOCAL =
      Pattern.compile("url\\(\\s*(['\"]?)#([^'\"()]+?)\\1\\s*\\)", Pattern.CASE_INSENSITIVE);

  /** What the engine's own scanner reads without losing its way. */
  private static final Pattern SAFE =
      Pattern.compile(
          "(?:[\\w\\s.,%()/+\\-\\x{80}-\\x{10ffff}]|#[0-9a-fA-F]{6}\\b|#[0-9a-fA-F]{3}\\b"
              + "|url\\(#[^)'\"]*\\)|'[^'\\\\\n]*'|\"[^\"\\\\\n]*\")*");

  private static final Pattern PROCESS =
      Pattern.compile(
          "\\b(?:icc-color|icc-named-color|device-cmyk|device-gray|device-rgb|device-nchannel)\\(",
          Pattern.CASE_INSENSITIVE);

  private static final Set<String> UNITS =
      Set.of("", "px", "pt", "pc", "mm", "cm", "in", "em", "ex", "%");

  private final PageSize page;

  PropertyValues(PageSize page) {
    this.page = page;
  }

  /** The value in its plain form, or null if the property does not take it. */
  @Nullable String canonical(String name, String stated) {
    Property property = Property.of(name);
    String value = Calc.folded(withoutExponents(stated.strip()), page);
    if (value == null || value.isEmpty()) {
      return null;
    }
    if (property == null) {
      return SAFE.matcher(value).matches() ? value : null;
    }
    return switch (property.kind()) {
      case PAINT -> paint(value);
      case COLOUR -> colour(value);
      case OPACITY -> opacity(value);
      case REFERENCE -> reference(value);
      case LENGTH, POSITIVE_LENGTH -> length(property, value);
      case DASHES -> dashes(value);
      case NUMBER -> positive(value);
      case PATH -> value.equals("none") || Scan.arguments(value, "path") != null ? value : null;
      case WORD -> word(name, property, value);
      case TEXT -> text(name, value);
    };
  }

  private static String withoutExponents(String value) {
    if (value.indexOf('e') < 0 && value.indexOf('E') < 0) {
      return value;
    }
    Matcher m = EXPONENT.matcher(value);
    return m.replaceAll(found -> Lengths.plain(Double.parseDouble(found.group(1))));
  }

  private static @Nullable String paint(String value) {
    Matcher url = LOCAL.matcher(value);
    if (url.lookingAt()) {
      String reference = "url(#" + url.group(2) + ")";
      String rest = value.substring(url.end()).strip();
      if (rest.isEmpty()) {
        return reference;
      }
      String otherwise = rest.equalsIgnoreCase("none") ? "none" : colour(rest);
      return otherwise == null ? null : reference + " " + otherwise;
    }
    String low = value.toLowerCase(Locale.ROOT);
    return switch (low) {
      case "none", "context-fill", "context-stroke" -> low;
      default -> colour(value);
    };
  }

  /** A colour; one of a printing process beside it is passed over (SVG 1.1, 11.2). */
  private static @Nullable String colour(String value) {
    int at = process(value);
    return Colours.canonical(at > 0 ? value.substring(0, at).strip() : value);
  }

  /** Where the colour of a printing process begins in a value, or -1. */
  private static int process(String value) {
    Matcher m = PROCESS.matcher(value);
    return m.find() ? m.start() : -1;
  }

  /** Whether a value that is taken names a colour of a printing process besides. */
  static boolean printsOtherwise(String name, String value) {
    Property property = Property.of(name);
    boolean colour =
        property != null
            && (property.kind() == Property.Kind.PAINT || property.kind() == Property.Kind.COLOUR);
    return colour && process(value) > 0;
  }

  private static @Nullable String opacity(String value) {
    Double share = Lengths.share(value);
    return share == null ? null : Lengths.plain(Math.max(0, Math.min(1, share)));
  }

  private static @Nullable String reference(String value) {
    Matcher url = LOCAL.matcher(value);
    if (url.matches()) {
      return "url(#" + url.group(2) + ")";
    }
    return value.equalsIgnoreCase("none") ? "none" : null;
  }

  private @Nullable String length(Property property, String value) {
    String low = value.toLowerCase(Locale.ROOT);
    if (property.words().contains(low)) {
      return low;
    }
    String length = length(value);
    boolean negative = length != null && length.startsWith("-");
    return negative && property.kind() == Property.Kind.POSITIVE_LENGTH ? null : length;
  }

  private @Nullable String length(String value) {
    Lengths.Dimension d = Lengths.dimension(value);
    if (d == null) {
      return null;
    }
    if (UNITS.contains(d.unit())) {
      return value;
    }
    double pixels = d.number() * Calc.pixelsPer(d.unit(), page);
    return Double.isNaN(pixels) ? null : Lengths.plain(pixels) + "px";
  }

  private @Nullable String dashes(String value) {
    if (value.equalsIgnoreCase("none")) {
      return "none";
    }
    List<String> dashes = new ArrayList<>();
    for (String part : value.split("\\s*,\\s*|\\s+", -1)) {
      String length = length(part);
      if (length == null || length.startsWith("-")) {
        return null;
      }
      dashes.add(length);
    }
    return String.join(",", dashes);
  }

  private static @Nullable String positive(String value) {
    Double number = Lengths.number(value);
    return number == null || number < 0 ? null : value;
  }

  private static @Nullable String word(String name, Property property, String value) {
    for (String word : property.words()) {
      if (word.equalsIgnoreCase(value)) {
        return word;
      }
    }
    String low = value.toLowerCase(Locale.ROOT);
    boolean shown =
        Set.of(
                "flex",
                "grid",
                "inline-block",
                "inline-flex",
                "inline-grid",
                "flow-root",
                "contents")
            .contains(low);
    return switch (name) {
      case "display" -> shown ? "inline" : null;
      case "overflow" -> low.equals("clip") ? "hidden" : null;
      case "font-style" -> low.matches("oblique\\s+\\S+deg") ? "oblique" : null;
      default -> null;
    };
  }

  private static @Nullable String text(String name, String value) {
    if (!SAFE.matcher(value).matches()) {
      return null;
    }
    Double number = name.equals("font-weight") ? Lengths.number(value) : null;
    if (number == null) {
      return value;
    }
    return number < 1 || number > 1000
        ? null
        : Long.toString(Math.max(1, Math.min(9, Math.round(number / 100))) * 100);
  }
}
