package dev.placket.packs.compose;

import dev.placket.packs.description.PackColourways.Lab;
import java.util.Locale;

/**
 * The colour of sRGB for one of CIELAB: CIE 15 for L*a*b* under D65, IEC 61966-2-1 for sRGB.
 *
 * @param hex as {@code #RRGGBB}, the nearest in each channel
 * @param shown whether screens can show it: no channel is cut off by more than half a step
 */
record ScreenColour(String hex, boolean shown) {
  /** The white of D65, 2° observer, with Y at 1. */
  private static final double WHITE_X = 0.3127 / 0.3290;

  private static final double WHITE_Z = (1 - 0.3127 - 0.3290) / 0.3290;

  static ScreenColour of(Lab lab) {
    double fy = (lab.l() + 16) / 116;
    double x = WHITE_X * cubed(fy + lab.a() / 500);
    double y = cubed(fy);
    double z = WHITE_Z * cubed(fy - lab.b() / 200);
    double[] linear = {
      3.2406 * x - 1.5372 * y - 0.4986 * z,
      -0.9689 * x + 1.8758 * y + 0.0415 * z,
      0.0557 * x - 0.2040 * y + 1.0570 * z
    };
    int rgb = 0;
    boolean shown = true;
    for (double channel : linear) {
      double level = 255 * encoded(channel);
      long nearest = Math.round(Math.max(0, Math.min(255, level)));
      shown &= level > -0.5 && level < 255.5;
      rgb = rgb << 8 | (int) nearest;
    }
    return new ScreenColour(String.format(Locale.ROOT, "#%06X", rgb), shown);
  }

  private static double cubed(double f) {
    return f > 6.0 / 29 ? f * f * f : 3 * (6.0 / 29) * (6.0 / 29) * (f - 4.0 / 29);
  }

  private static double encoded(double linear) {
    return linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.pow(linear, 1 / 2.4) - 0.055;
  }
}
