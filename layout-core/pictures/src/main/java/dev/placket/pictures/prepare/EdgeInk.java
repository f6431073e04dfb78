package dev.placket.pictures.prepare;

/**
 * Finds what ink the pixels along a cleared ground are mixed from: from such a pixel the picture
 * brightens steadily towards the ground, and darkens away from it until it reaches the ink.
 */
final class EdgeInk {
  /** An edge that was enlarged fourfold is this many pixels wide. */
  static final int REACH = 8;

  private static final int[] DX = {1, 1, 0, -1, -1, -1, 0, 1};
  private static final int[] DY = {0, 1, 1, 1, 0, -1, -1, -1};

  /**
   * Ink over the deepest pixel of a line across it, in pixels: a line that nowhere fills a pixel
   * has 2, or a little more where it runs aslant.
   */
  private static final double FULL_WIDTH = 2.3;

  static final int WIDE = 3;

  private final GroundColour ground;
  private final BitRows cleared;
  private final int inkDepth;
  private final int slack;
  private final Window window;

  /** Rows around the one being worked on, opaque, by their number in the picture. */
  interface Window {
    int[] row(int y);
  }

  EdgeInk(GroundColour ground, GroundMask.Result mask, Window window) {
    this.ground = ground;
    this.cleared = mask.cleared();
    this.inkDepth = mask.inkDepth();
    this.slack = ground.spread() / 4;
    this.window = window;
  }

  /** The pixel without its ground, or as it is if there is none in it. */
  int unmixed(int x, int y) {
    int p = at(x, y);
    int depth = ground.depth(p);
    int deepest = -1;
    int deepX = x;
    int deepY = y;
    for (int d = 0; d < DX.length; d++) {
      if (leadsToGround(x, y, depth, DX[d], DY[d])) {
        int steps = deepening(x, y, depth, -DX[d], -DY[d]);
        int u = x - steps * DX[d];
        int v = y - steps * DY[d];
        if (ground.depth(at(u, v)) > deepest) {
          deepest = ground.depth(at(u, v));
          deepX = u;
          deepY = v;
        }
      }
    }
    if (deepest < 0) {
      return fringe(x, y, depth) ? Unmixing.darkest(p, ground) : p;
    }
    boolean allInk = wide(deepX, deepY, deepest);
    int ink = at(deepX, deepY);
    return Unmixing.of(p, ground, allInk ? ink : lineInk(ink, deepest));
  }

  /** Whether a pixel is faint noise right beside a noisy ground. */
  private boolean fringe(int x, int y, int depth) {
    if (depth <= ground.spread() || depth > 2 * ground.spread()) {
      return false;
    }
    for (int d = 0; d < DX.length; d++) {
      if (cleared.inside(x + DX[d], y + DY[d])) {
        return true;
      }
    }
    return false;
  }

  /** Whether the picture only brightens on the way to a ground in reach. */
  private boolean leadsToGround(int x, int y, int depth, int dx, int dy) {
    int last = depth;
    for (int k = 1; k <= REACH; k++) {
      int u = x + k * dx;
      int v = y + k * dy;
      if (u < 0 || u >= cleared.width || v < 0 || v >= cleared.height) {
        return false;
      }
      if (cleared.get(u, v)) {
        return true;
      }
      int now = ground.depth(at(u, v));
      if (now > last + slack) {
        return false;
      }
      last = now;
    }
    return false;
  }

  private int deepening(int x, int y, int depth, int dx, int dy) {
    int last = depth;
    int k = 0;
    while (k < REACH) {
      int u = x + (k + 1) * dx;
      int v = y + (k + 1) * dy;
      if (!ink(u, v) || ground.depth(at(u, v)) <= last + slack) {
        return k;
      }
      last = ground.depth(at(u, v));
      k++;
    }
    return k;
  }

  /** Whether the line through a pixel is so wide on all four axes that its middle is all ink. */
  private boolean wide(int x, int y, int depth) {
    for (int d = 0; d < 4; d++) {
      double step = Math.hypot(DX[d], DY[d]);
      double sum = depth;
      for (int k = -WIDE; k <= WIDE; k++) {
        int u = x + k * DX[d];
        int v = y + k * DY[d];
        sum += k != 0 && ink(u, v) ? ground.depth(at(u, v)) : 0;
      }
      if (sum * step < FULL_WIDTH * depth) {
        return false;
      }
    }
    return true;
  }

  /**
   * A line finer than two pixels may show its ink nowhere: it is taken for the ink of the drawing
   * if it may be a mixture of that, else for the darkest there may be.
   */
  private int lineInk(int seen, int depth) {
    if (depth >= inkDepth) {
      return seen;
    }
    double more = inkDepth / (double) depth;
    int ink = 0xFF000000;
    int[] g = {ground.blue(), ground.green(), ground.red()};
    for (int i = 0; i < 3; i++) {
      long c = Math.round(g[i] + ((seen >> 8 * i & 255) - g[i]) * more);
      ink |= (int) Math.max(0, Math.min(255, c)) << 8 * i;
    }
    return ink;
  }

  private boolean ink(int x, int y) {
    return x >= 0 && x < cleared.width && y >= 0 && y < cleared.height && !cleared.get(x, y);
  }

  private int at(int x, int y) {
    return window.row(y)[x];
  }
}
