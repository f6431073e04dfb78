package dev.placket.pictures.ink;

import dev.placket.pictures.base.Ground;

/**
 * What counts as ground in a raster: a kind, a colour and how far from it a pixel may be.
 *
 * @param ground its kind
 * @param red of its colour, 0 to 255
 * @param green of its colour, 0 to 255
 * @param blue of its colour, 0 to 255
 * @param tolerance levels of 255 by which each of red, green, blue may differ
 */
public record GroundLook(Ground ground, int red, int green, int blue, int tolerance) {
  /** Alpha up to this is nothing anybody sees. */
  static final int FAINT = 8;

  /** The most frequent pixel of a clean ground, by which equal rows are passed over at once. */
  int plain() {
    return ground == Ground.TRANSPARENT ? 0 : 0xFF000000 | red << 16 | green << 8 | blue;
  }

  /** Whether a pixel is part of the ground rather than ink. */
  boolean isGround(int p) {
    return switch (ground) {
      case TRANSPARENT -> p >>> 24 <= FAINT;
      case OPAQUE_WHITE -> p >>> 24 <= FAINT || alike(p);
      case OPAQUE_OTHER -> false;
    };
  }

  boolean alike(int p) {
    return Math.abs((p >> 16 & 255) - red) <= tolerance
        && Math.abs((p >> 8 & 255) - green) <= tolerance
        && Math.abs((p & 255) - blue) <= tolerance;
  }

  int[] colour() {
    return new int[] {red, green, blue};
  }
}
