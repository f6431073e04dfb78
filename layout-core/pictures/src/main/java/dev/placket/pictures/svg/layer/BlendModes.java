package dev.placket.pictures.svg.layer;

import dev.placket.pictures.base.Blend;

/** The functions B(cb, cs) of Compositing and Blending 1, 10.1 and 10.2. */
final class BlendModes {
  private BlendModes() {}

  /** Backdrop and source mixed, channels from 0 to 1. */
  static double[] mixed(Blend blend, double[] cb, double[] cs) {
    return switch (blend) {
      case HUE -> withLum(withSat(cs, sat(cb)), lum(cb));
      case SATURATION -> withLum(withSat(cb, sat(cs)), lum(cb));
      case COLOR -> withLum(cs, lum(cb));
      case LUMINOSITY -> withLum(cb, lum(cs));
      default -> {
        double[] out = new double[3];
        for (int i = 0; i < 3; i++) {
          out[i] = channel(blend, cb[i], cs[i]);
        }
        yield out;
      }
    };
  }

  private static double channel(Blend blend, double b, double s) {
    return switch (blend) {
      case MULTIPLY -> b * s;
      case SCREEN -> b + s - b * s;
      case OVERLAY -> hardLight(s, b);
      case DARKEN -> Math.min(b, s);
      case LIGHTEN -> Math.max(b, s);
      case COLOR_DODGE -> b == 0 ? 0 : s >= 1 ? 1 : Math.min(1, b / (1 - s));
      case COLOR_BURN -> b >= 1 ? 1 : s <= 0 ? 0 : 1 - Math.min(1, (1 - b) / s);
      case HARD_LIGHT -> hardLight(b, s);
      case SOFT_LIGHT -> softLight(b, s);
      case DIFFERENCE -> Math.abs(b - s);
      case EXCLUSION -> b + s - 2 * b * s;
      default -> s;
    };
  }

  private static double hardLight(double b, double s) {
    double twice = 2 * s;
    return s <= 0.5 ? b * twice : b + (twice - 1) - b * (twice - 1);
  }

  private static double softLight(double b, double s) {
    if (s <= 0.5) {
      return b - (1 - 2 * s) * b * (1 - b);
    }
    double d = b <= 0.25 ? ((16 * b - 12) * b + 4) * b : Math.sqrt(b);
    return b + (2 * s - 1) * (d - b);
  }

  private static double lum(double[] c) {
    return 0.3 * c[0] + 0.59 * c[1] + 0.11 * c[2];
  }

  private static double sat(double[] c) {
    return Math.max(c[0], Math.max(c[1], c[2])) - Math.min(c[0], Math.min(c[1], c[2]));
  }

  /** The colour moved to a luminosity, and drawn towards it where a channel leaves the range. */
  private static double[] withLum(double[] c, double luminosity) {
    double move = luminosity - lum(c);
    double[] out = {c[0] + move, c[1] + move, c[2] + move};
    double l = lum(out);
    double least = Math.min(out[0], Math.min(out[1], out[2]));
    double most = Math.max(out[0], Math.max(out[1], out[2]));
    for (int i = 0; i < 3; i++) {
      if (least < 0) {
        out[i] = l + (out[i] - l) * l / (l - least);
      }
      if (most > 1) {
        out[i] = l + (out[i] - l) * (1 - l) / (most - l);
      }
    }
    return out;
  }

  /** The least channel becomes 0, the greatest the saturation, the middle one keeps its place. */
  private static double[] withSat(double[] c, double saturation) {
    double least = Math.min(c[0], Math.min(c[1], c[2]));
    double range = sat(c);
    double[] out = new double[3];
    for (int i = 0; i < 3 && range > 0; i++) {
      out[i] = (c[i] - least) * saturation / range;
    }
    return out;
  }
}
