package dev.placket.layout.fit;

/**
 * Shares neighbours among a given number of sheets so that the smallest scale is the largest it can
 * be. O(sheets × n²) look-ups.
 */
final class ShareSheets {
  /**
   * The scale of the flats from one number to before another on the first sheet or a further one.
   */
  interface Scale {
    double of(boolean first, int from, int to);
  }

  private final int[] ends;
  private final double scale;

  /**
   * Finds the breaks.
   *
   * @param sheets how many there are
   * @param n how many flats flow
   * @param everyOne whether the first sheet too needs one of them
   * @param scale of a run of them; falls as it gets longer
   */
  ShareSheets(int sheets, int n, boolean everyOne, Scale scale) {
    double[][] best = new double[sheets + 1][n + 1];
    int[][] start = new int[sheets + 1][n + 1];
    for (int to = everyOne ? 1 : 0; to <= n; to++) {
      best[1][to] = scale.of(true, 0, to);
    }
    for (int s = 2; s <= sheets; s++) {
      for (int to = 1; to <= n; to++) {
        for (int from = to - 1; from >= 0; from--) {
          double before = best[s - 1][from];
          if (before <= best[s][to]) {
            continue;
          }
          double its = Math.min(before, scale.of(false, from, to));
          if (its > best[s][to]) {
            best[s][to] = its;
            start[s][to] = from;
          }
        }
      }
    }
    this.scale = best[sheets][n];
    this.ends = new int[sheets];
    int to = n;
    for (int s = sheets; s > 0; s--) {
      ends[s - 1] = to;
      to = start[s][to];
    }
  }

  /** Before which flat each sheet ends. */
  int[] ends() {
    return ends;
  }

  /** The smallest scale of the sheets. */
  double scale() {
    return scale;
  }
}
