package dev.placket.layout.solve;

import java.util.Arrays;

/**
 * Shares neighbours among a given number of sheets so that the smallest scale is the largest it can
 * be.
 *
 * <p>The later a sheet begins, the smaller what is before it comes out and the larger its own
 * flats, so the best beginning is where the two cross, found by halving: O(sheets × n × log n)
 * look-ups at most, a few for two sheets. With bounds for scales the result is a bound, since then
 * both sides of the crossing are counted.
 */
final class ShareSheets {
  /**
   * The scale of the flats from one number to before another on the first sheet or a further one.
   */
  interface Scale {
    double of(boolean first, int from, int to);
  }

  private final boolean everyOne;
  private final Scale of;
  private final double[][] best;
  private final int[][] start;
  private final int[] ends;

  /**
   * Finds the breaks.
   *
   * @param sheets how many there are
   * @param n how many flats flow
   * @param everyOne whether the first sheet too needs one of them
   * @param scale of a run of them; falls as it gets longer
   */
  ShareSheets(int sheets, int n, boolean everyOne, Scale scale) {
    this.everyOne = everyOne;
    this.of = scale;
    this.best = new double[sheets + 1][n + 1];
    this.start = new int[sheets + 1][n + 1];
    for (double[] row : best) {
      Arrays.fill(row, -1);
    }
    best(sheets, n);
    this.ends = new int[sheets];
    int to = n;
    for (int s = sheets; s > 0; s--) {
      ends[s - 1] = to;
      to = start[s][to];
    }
  }

  /** The largest least scale of the flats before that one on so many sheets; 0 if they do not. */
  private double best(int sheets, int to) {
    if (best[sheets][to] < 0) {
      best[sheets][to] = sheets == 1 ? of.of(true, 0, to) : cross(sheets, to);
    }
    return best[sheets][to];
  }

  private double cross(int sheets, int to) {
    int least = everyOne ? sheets - 1 : sheets - 2;
    int low = least;
    int high = to;
    while (low < high) {
      int middle = (low + high) / 2;
      if (of.of(false, middle, to) >= best(sheets - 1, middle)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    double before = low < to ? best(sheets - 1, low) : 0;
    double own = low > least && low <= to ? of.of(false, low - 1, to) : 0;
    start[sheets][to] = before >= own ? low : low - 1;
    return Math.max(before, own);
  }

  /** Before which flat each sheet ends. */
  int[] ends() {
    return ends;
  }

  /** The smallest scale of the sheets. */
  double scale() {
    return best[ends.length][ends[ends.length - 1]];
  }
}
