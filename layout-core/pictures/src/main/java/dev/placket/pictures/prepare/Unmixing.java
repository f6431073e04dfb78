package dev.placket.pictures.prepare;

/** Takes the ground out of a pixel that is part ink, part ground. */
final class Unmixing {
  private Unmixing() {}

  /**
   * Ink with the alpha that gives the pixel again on its ground, to half a level.
   *
   * @param argb the pixel, opaque
   * @param ink the colour that is mixed in; if no alpha up to 1 gives the pixel with it, the one
   *     that comes nearest to it
   */
  static int of(int argb, GroundColour ground, int ink) {
    double along = 0;
    double square = 0;
    double least = 0;
    for (int shift = 0; shift <= 16; shift += 8) {
      int g = channel(ground, shift);
      int off = g - (argb >> shift & 255);
      int full = g - (ink >> shift & 255);
      along += (double) off * full;
      square += (double) full * full;
      least = Math.max(least, ground.leastAlpha(g, argb >> shift & 255));
    }
    double alpha = Math.max(least, square > 0 ? along / square : 1);
    int a = (int) Math.min(255, Math.ceil(alpha * 255 - 1e-9));
    return a == 255 ? argb : withAlpha(argb, ground, a);
  }

  /** Ink with the least alpha that can give the pixel: the darkest ink there may be. */
  static int darkest(int argb, GroundColour ground) {
    return of(argb, ground, 0xFF000000);
  }

  private static int withAlpha(int argb, GroundColour ground, int a) {
    int out = a << 24;
    for (int shift = 0; shift <= 16 && a > 0; shift += 8) {
      int g = channel(ground, shift);
      long c = Math.round(g + ((argb >> shift & 255) - g) * 255.0 / a);
      out |= (int) Math.max(0, Math.min(255, c)) << shift;
    }
    return out;
  }

  private static int channel(GroundColour ground, int shift) {
    return shift == 16 ? ground.red() : shift == 8 ? ground.green() : ground.blue();
  }
}
