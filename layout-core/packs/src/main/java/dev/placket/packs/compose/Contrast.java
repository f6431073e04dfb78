package dev.placket.packs.compose;

/** Contrast of two colours: WCAG 2, relative luminance and contrast ratio. */
public final class Contrast {
  /** What lines keep from their ground: WCAG 2, 1.4.11. */
  static final double LINES = 3;

  private Contrast() {}

  /**
   * The ratio, from 1 to 21.
   *
   * @param one a colour as {@code #RRGGBB}
   * @param other another
   */
  public static double ratio(String one, String other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(String colour) {
    int rgb = colour.matches("#[0-9A-Fa-f]{6}") ? Integer.parseInt(colour.substring(1), 16) : 0;
    return 0.2126 * linear(rgb >> 16 & 255)
        + 0.7152 * linear(rgb >> 8 & 255)
        + 0.0722 * linear(rgb & 255);
  }

  private static double linear(int channel) {
    double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }
}
