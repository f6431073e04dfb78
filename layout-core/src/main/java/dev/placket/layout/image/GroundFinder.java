package dev.placket.layout.image;

import dev.placket.layout.flat.InkedBox;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Tells the ground of a raster from its border, and ink from ground. */
final class GroundFinder {
  /** Alpha up to this is nothing anybody sees. */
  static final int FAINT = 8;

  private static final int WHITE = 230;
  private static final int TINT = 20;

  private final Pixels pixels;
  private final int tolerance;
  private final Ground ground;
  private final int[] colour;

  GroundFinder(Pixels pixels, int tolerance) {
    this.pixels = pixels;
    this.tolerance = tolerance;
    int[] border = border(pixels);
    this.colour = new int[] {median(border, 16), median(border, 8), median(border, 0)};
    this.ground = judge(border);
  }

  Ground ground() {
    return ground;
  }

  /** The colour of the ground: red, green, blue. */
  int[] colour() {
    return colour.clone();
  }

  private Ground judge(int[] border) {
    long clear = Arrays.stream(border).filter(p -> p >>> 24 <= FAINT).count();
    if (2 * clear >= border.length) {
      return Ground.TRANSPARENT;
    }
    int least = Math.min(colour[0], Math.min(colour[1], colour[2]));
    int most = Math.max(colour[0], Math.max(colour[1], colour[2]));
    long alike = Arrays.stream(border).filter(this::alike).count();
    boolean white = least >= WHITE && most - least <= TINT && 2 * alike >= border.length;
    return white ? Ground.OPAQUE_WHITE : Ground.OPAQUE_OTHER;
  }

  private boolean alike(int p) {
    return Math.abs((p >> 16 & 255) - colour[0]) <= tolerance
        && Math.abs((p >> 8 & 255) - colour[1]) <= tolerance
        && Math.abs((p & 255) - colour[2]) <= tolerance;
  }

  /** Whether a pixel is part of the ground rather than ink. */
  boolean isGround(int p) {
    return switch (ground) {
      case TRANSPARENT -> p >>> 24 <= FAINT;
      case OPAQUE_WHITE -> p >>> 24 <= FAINT || alike(p);
      case OPAQUE_OTHER -> false;
    };
  }

  /** The box of all ink in pixels, or null if there is none. O(pixels), rows in order. */
  @Nullable InkedBox box() {
    int w = pixels.width();
    int left = w;
    int right = -1;
    int top = -1;
    int bottom = -1;
    for (int y = 0; y < pixels.height(); y++) {
      int first = 0;
      while (first < w && isGround(pixels.argb()[y * w + first])) {
        first++;
      }
      if (first == w) {
        continue;
      }
      int last = w - 1;
      while (last > right && isGround(pixels.argb()[y * w + last])) {
        last--;
      }
      left = Math.min(left, first);
      right = Math.max(right, last);
      top = top < 0 ? y : top;
      bottom = y;
    }
    return top < 0 ? null : new InkedBox(left, top, right + 1, bottom + 1);
  }

  private static int[] border(Pixels p) {
    int w = p.width();
    int h = p.height();
    int[] border = new int[2 * w + 2 * h];
    for (int x = 0; x < w; x++) {
      border[2 * x] = p.argb()[x];
      border[2 * x + 1] = p.argb()[(h - 1) * w + x];
    }
    for (int y = 0; y < h; y++) {
      border[2 * w + 2 * y] = p.argb()[y * w];
      border[2 * w + 2 * y + 1] = p.argb()[y * w + w - 1];
    }
    return border;
  }

  private static int median(int[] border, int shift) {
    int[] values = Arrays.stream(border).map(p -> p >> shift & 255).sorted().toArray();
    return values[values.length / 2];
  }
}
