package dev.placket.layout.image;

import java.util.Arrays;

/**
 * Makes the ground of an opaque picture transparent from the border inwards, and takes the ground
 * out of the mixed pixels along it; white that ink encloses stays.
 */
final class GroundClearing {
  private final Pixels pixels;
  private final GroundFinder finder;
  private final int[] out;
  private int[] stack = new int[1024];
  private int size;

  private GroundClearing(Pixels pixels, GroundFinder finder) {
    this.pixels = pixels;
    this.finder = finder;
    this.out = pixels.argb().clone();
  }

  static Pixels clear(Pixels pixels, GroundFinder finder) {
    if (finder.ground() != Ground.OPAQUE_WHITE) {
      return pixels;
    }
    GroundClearing c = new GroundClearing(pixels, finder);
    c.flood();
    c.unmixEdge();
    return new Pixels(pixels.width(), pixels.height(), c.out);
  }

  private void flood() {
    int w = pixels.width();
    int h = pixels.height();
    for (int x = 0; x < w; x++) {
      visit(x);
      visit((h - 1) * w + x);
    }
    for (int y = 0; y < h; y++) {
      visit(y * w);
      visit(y * w + w - 1);
    }
    while (size > 0) {
      int at = stack[--size];
      int x = at % w;
      if (x > 0) {
        visit(at - 1);
      }
      if (x < w - 1) {
        visit(at + 1);
      }
      if (at >= w) {
        visit(at - w);
      }
      if (at < w * (h - 1)) {
        visit(at + w);
      }
    }
  }

  private void visit(int at) {
    if (out[at] == 0 || !finder.isGround(out[at])) {
      return;
    }
    out[at] = 0;
    if (size == stack.length) {
      stack = Arrays.copyOf(stack, size * 2);
    }
    stack[size++] = at;
  }

  private void unmixEdge() {
    int w = pixels.width();
    int h = pixels.height();
    int[] ground = finder.colour();
    int[] flooded = out.clone();
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        int at = y * w + x;
        if (flooded[at] != 0 && besideClear(flooded, x, y)) {
          out[at] = unmixed(flooded[at], ground);
        }
      }
    }
  }

  private boolean besideClear(int[] flooded, int x, int y) {
    int w = pixels.width();
    for (int v = Math.max(0, y - 1); v <= Math.min(pixels.height() - 1, y + 1); v++) {
      for (int u = Math.max(0, x - 1); u <= Math.min(w - 1, x + 1); u++) {
        if (flooded[v * w + u] == 0) {
          return true;
        }
      }
    }
    return false;
  }

  /** The least alpha that gives the pixel over its ground, and the colour that goes with it. */
  static int unmixed(int p, int[] ground) {
    double alpha = 0;
    for (int i = 0; i < 3; i++) {
      int c = p >> (16 - 8 * i) & 255;
      int g = ground[i];
      double a = c <= g ? (g - c) / (double) g : (c - g) / (255.0 - g);
      alpha = Math.max(alpha, a);
    }
    int result = (int) Math.round(alpha * (p >>> 24)) << 24;
    for (int i = 0; i < 3 && alpha > 0; i++) {
      int c = p >> (16 - 8 * i) & 255;
      long ink = Math.round(ground[i] + (c - ground[i]) / alpha);
      result |= (int) Math.max(0, Math.min(255, ink)) << (16 - 8 * i);
    }
    return result;
  }
}
