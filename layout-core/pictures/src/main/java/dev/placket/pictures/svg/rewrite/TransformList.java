package dev.placket.pictures.svg.rewrite;

import java.awt.geom.AffineTransform;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Transform functions of CSS Transforms 1, 10, and of the attribute, and an origin. */
final class TransformList {
  private static final Pattern FUNCTION =
      Pattern.compile("\\s*,?\\s*([a-zA-Z0-9]+)\\s*\\(([^()]*)\\)");
  private static final Pattern QUANTITY =
      Pattern.compile("([+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:e[+-]?[0-9]+)?)([a-z%]*)");

  private TransformList() {}

  /** The transform, or null if it is none or one in space. */
  static @Nullable AffineTransform read(String text, double width, double height) {
    AffineTransform all = new AffineTransform();
    Matcher m = FUNCTION.matcher(text.strip());
    int end = 0;
    while (m.find() && m.start() == end) {
      end = m.end();
      String[] in = m.group(2).strip().toLowerCase(Locale.ROOT).split("\\s*,\\s*|\\s+");
      AffineTransform one = function(m.group(1).toLowerCase(Locale.ROOT), in, width, height);
      if (one == null) {
        return null;
      }
      all.concatenate(one);
    }
    return end == text.strip().length() ? all : null;
  }

  private static @Nullable AffineTransform function(
      String name, String[] in, double width, double height) {
    try {
      return switch (name) {
        case "matrix" -> in.length == 6 ? matrix(in) : null;
        case "translate" ->
            AffineTransform.getTranslateInstance(
                length(in[0], width), in.length > 1 ? length(in[1], height) : 0);
        case "translatex" -> AffineTransform.getTranslateInstance(length(in[0], width), 0);
        case "translatey" -> AffineTransform.getTranslateInstance(0, length(in[0], height));
        case "scale" ->
            AffineTransform.getScaleInstance(
                share(in[0]), in.length > 1 ? share(in[1]) : share(in[0]));
        case "scalex" -> AffineTransform.getScaleInstance(share(in[0]), 1);
        case "scaley" -> AffineTransform.getScaleInstance(1, share(in[0]));
        case "rotate" ->
            in.length == 3
                ? AffineTransform.getRotateInstance(
                    angle(in[0]), length(in[1], width), length(in[2], height))
                : AffineTransform.getRotateInstance(angle(in[0]));
        case "skew" ->
            AffineTransform.getShearInstance(
                Math.tan(angle(in[0])), in.length > 1 ? Math.tan(angle(in[1])) : 0);
        case "skewx" -> AffineTransform.getShearInstance(Math.tan(angle(in[0])), 0);
        case "skewy" -> AffineTransform.getShearInstance(0, Math.tan(angle(in[0])));
        default -> null;
      };
    } catch (NumberFormatException e) {
      return null;
    }
  }

  private static AffineTransform matrix(String[] in) {
    double[] v = new double[6];
    for (int i = 0; i < 6; i++) {
      v[i] = length(in[i], 0);
    }
    return new AffineTransform(v);
  }

  /**
   * Where an origin lies (CSS Transforms 1, 6): without one at the corner, as SVG has it.
   *
   * @param text one or two words or lengths; a third, the depth, is passed over
   */
  static double[] origin(String text, double width, double height) {
    if (text.isBlank()) {
      return new double[2];
    }
    String[] parts = text.strip().toLowerCase(Locale.ROOT).split("\\s*,\\s*|\\s+");
    String x = parts[0];
    String y = parts.length > 1 ? parts[1] : "center";
    boolean swapped =
        x.equals("top") || x.equals("bottom") || y.equals("left") || y.equals("right");
    try {
      return new double[] {
        side(swapped ? y : x, width), side(swapped ? x : y, height),
      };
    } catch (NumberFormatException e) {
      return new double[2];
    }
  }

  private static double side(String word, double all) {
    return switch (word) {
      case "left", "top" -> 0;
      case "center" -> all / 2;
      case "right", "bottom" -> all;
      default -> length(word, all);
    };
  }

  /** As the attribute is written. */
  static String write(AffineTransform t) {
    return String.format(
        Locale.ROOT,
        "matrix(%s %s %s %s %s %s)",
        t.getScaleX(),
        t.getShearY(),
        t.getShearX(),
        t.getScaleY(),
        t.getTranslateX(),
        t.getTranslateY());
  }

  /** CSS Values 4, 6.2: an inch has 96 px. */
  private static double length(String text, double all) {
    Matcher m = quantity(text);
    double n = Double.parseDouble(m.group(1));
    return switch (m.group(2)) {
      case "", "px" -> n;
      case "%" -> n * all / 100;
      case "in" -> n * 96;
      case "cm" -> n * 96 / 2.54;
      case "mm" -> n * 96 / 25.4;
      case "q" -> n * 96 / 101.6;
      case "pt" -> n * 96 / 72;
      case "pc" -> n * 16;
      default -> throw new NumberFormatException(text);
    };
  }

  /** An absolute length in pixels, or null. */
  static @Nullable Double pixels(String text) {
    try {
      return length(text.strip().toLowerCase(Locale.ROOT), Double.NaN);
    } catch (NumberFormatException e) {
      return null;
    }
  }

  private static double share(String text) {
    Matcher m = quantity(text);
    double n = Double.parseDouble(m.group(1));
    return switch (m.group(2)) {
      case "" -> n;
      case "%" -> n / 100;
      default -> throw new NumberFormatException(text);
    };
  }

  private static double angle(String text) {
    Matcher m = quantity(text);
    double n = Double.parseDouble(m.group(1));
    return switch (m.group(2)) {
      case "", "deg" -> Math.toRadians(n);
      case "grad" -> Math.PI * n / 200;
      case "rad" -> n;
      case "turn" -> Math.PI * 2 * n;
      default -> throw new NumberFormatException(text);
    };
  }

  private static Matcher quantity(String text) {
    Matcher m = QUANTITY.matcher(text);
    if (!m.matches()) {
      throw new NumberFormatException(text);
    }
    return m;
  }
}
