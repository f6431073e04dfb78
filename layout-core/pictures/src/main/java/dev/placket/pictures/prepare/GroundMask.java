package dev.placket.pictures.prepare;

import dev.placket.pictures.base.PictureException;
import java.util.Arrays;

/** Which pixels are ground to be cleared: a bit for each, so that large pictures fit. */
final class GroundMask {
  /** Islands of faint pixels up to this size are noise where the ground is noisy. */
  private static final int SPECK = 24;

  /** Pixels are flat while they differ by no more than this part of their depth. */
  private static final int FLAT = 16;

  private final BitRows alike;
  private final BitRows cleared;
  private final BitRows strong;
  private final long[] counts = new long[256];
  private int[] stack = new int[4096];
  private int size;

  private GroundMask(int width, int height) {
    this.alike = new BitRows(width, height);
    this.cleared = new BitRows(width, height);
    this.strong = new BitRows(width, height);
  }

  /**
   * What is cleared.
   *
   * @param cleared the pixels of the ground
   * @param inkDepth how dark the darkest two hundredth of all flat ink is, as {@link
   *     GroundColour#depth}; 255 where no ink is flat, as in a drawing of fine lines
   */
  record Result(BitRows cleared, int inkDepth) {}

  /** Reads all rows once. O(pixels). */
  static Result of(PixelRows rows, GroundColour ground, Clearing clearing) throws PictureException {
    GroundMask mask = new GroundMask(rows.width(), rows.height());
    mask.read(rows, ground);
    if (clearing == Clearing.ENCLOSED_TOO) {
      return new Result(mask.alike, mask.inkDepth(ground));
    }
    mask.flood();
    if (ground.spread() > 0) {
      mask.dropSpecks();
    }
    return new Result(mask.cleared, mask.inkDepth(ground));
  }

  private void read(PixelRows rows, GroundColour ground) throws PictureException {
    int[] row = new int[rows.width()];
    int[][] depths = new int[3][rows.width()];
    int spread = ground.spread();
    try (PixelRows.Cursor in = rows.open()) {
      for (int y = 0; y < rows.height(); y++) {
        in.next(row);
        for (int x = 0; x < row.length; x++) {
          int depth = ground.depth(ground.opaque(row[x]));
          depths[y % 3][x] = depth;
          if (depth <= spread) {
            alike.set(x, y);
          } else {
            if (x > 1 && y > 1 && flat(depths, x, depth)) {
              counts[depth]++;
            }
            if (depth > 3 * spread) {
              strong.set(x, y);
            }
          }
        }
      }
    }
  }

  /** Whether three by three pixels, of which this is the last, are of one depth. */
  private static boolean flat(int[][] depths, int x, int depth) {
    int slack = depth / FLAT;
    for (int[] row : depths) {
      for (int u = x - 2; u <= x; u++) {
        if (Math.abs(row[u] - depth) > slack) {
          return false;
        }
      }
    }
    return true;
  }

  private int inkDepth(GroundColour ground) {
    long all = Arrays.stream(counts, ground.spread() + 1, counts.length).sum();
    long seen = 0;
    if (all == 0) {
      return counts.length - 1;
    }
    int depth = counts.length - 1;
    while (depth > 1 && (seen += counts[depth]) * 200 < all) {
      depth--;
    }
    return depth;
  }

  /** From the border inwards, over neighbours above, below, left and right. */
  private void flood() {
    int w = alike.width;
    int h = alike.height;
    for (int x = 0; x < w; x++) {
      start(x, 0);
      start(x, h - 1);
    }
    for (int y = 0; y < h; y++) {
      start(0, y);
      start(w - 1, y);
    }
  }

  private void start(int x, int y) {
    push(x, y);
    while (size > 0) {
      int v = stack[--size];
      int u = stack[--size];
      if (!open(u, v)) {
        continue;
      }
      int left = u;
      while (open(left - 1, v)) {
        left--;
      }
      boolean above = false;
      boolean below = false;
      for (int i = left; open(i, v); i++) {
        cleared.set(i, v);
        above = pushOnce(i, v - 1, above);
        below = pushOnce(i, v + 1, below);
      }
    }
  }

  /** Pushes the first of every run of open pixels. */
  private boolean pushOnce(int x, int y, boolean inRun) {
    boolean open = open(x, y);
    if (open && !inRun) {
      push(x, y);
    }
    return open;
  }

  private boolean open(int x, int y) {
    return alike.inside(x, y) && !cleared.get(x, y);
  }

  private void push(int x, int y) {
    if (size + 2 > stack.length) {
      stack = Arrays.copyOf(stack, 2 * stack.length);
    }
    stack[size++] = x;
    stack[size++] = y;
  }

  private void dropSpecks() {
    for (int y = 0; y < cleared.height; y++) {
      for (int x = 1; x < cleared.width; x++) {
        if (!cleared.get(x, y) && cleared.get(x - 1, y)) {
          dropSpeck(x, y);
        }
      }
    }
  }

  /** Clears the island of a pixel if it is small and faint; gives up as soon as it is not. */
  private void dropSpeck(int x, int y) {
    size = 0;
    push(x, y);
    for (int done = 0; done < size; done += 2) {
      int u = stack[done];
      int v = stack[done + 1];
      if (size > 2 * SPECK || strong.get(u, v)) {
        size = 0;
        return;
      }
      for (int dy = -1; dy <= 1; dy++) {
        for (int dx = -1; dx <= 1; dx++) {
          if (island(u + dx, v + dy) && !pushed(u + dx, v + dy)) {
            push(u + dx, v + dy);
          }
        }
      }
    }
    for (; size > 0; size -= 2) {
      cleared.set(stack[size - 2], stack[size - 1]);
    }
  }

  private boolean island(int x, int y) {
    return x >= 0 && x < cleared.width && y >= 0 && y < cleared.height && !cleared.get(x, y);
  }

  private boolean pushed(int x, int y) {
    for (int i = 0; i < size; i += 2) {
      if (stack[i] == x && stack[i + 1] == y) {
        return true;
      }
    }
    return false;
  }
}
