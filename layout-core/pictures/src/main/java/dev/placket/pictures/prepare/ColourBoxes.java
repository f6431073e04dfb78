package dev.placket.pictures.prepare;

import java.util.Arrays;

/**
 * Colours divided into groups of like ones, again and again where it takes away most of the squared
 * error: along the axis in which a group is widest, at the place that leaves least. O(n log n) for
 * each level of division.
 */
final class ColourBoxes {
  private static final int AXES = ColourSpace.AXES;

  private final double[] places;
  private final double[] weights;
  private final int[] order;
  private final int[] from;
  private final int[] to;
  private final int[] cut;
  private final double[] gain;
  private final int[] parent;
  private final int[] last;
  private int size;

  /**
   * Divides colours.
   *
   * @param places of all colours, one after the other
   * @param weights how often each occurs
   * @param apart how many of the first keep a group each
   * @param most groups at most
   */
  ColourBoxes(double[] places, double[] weights, int apart, int most) {
    int n = weights.length;
    this.places = places;
    this.weights = weights;
    this.order = new int[n];
    this.from = new int[most];
    this.to = new int[most];
    this.cut = new int[most];
    this.gain = new double[most];
    this.parent = new int[most];
    this.last = new int[n];
    Arrays.setAll(order, i -> i);
    for (int i = 0; i < apart; i++) {
      box(i, i + 1);
    }
    if (apart < n) {
      box(apart, n);
    }
    while (size < most && divide()) {}
    for (int b = 0; b < size; b++) {
      for (int i = from[b]; i < to[b]; i++) {
        last[order[i]] = b;
      }
    }
  }

  /** How many groups there are in the end. */
  int size() {
    return size;
  }

  /** The group of a colour while there were so many. */
  int group(int colour, int groups) {
    int b = last[colour];
    while (b >= groups) {
      b = parent[b];
    }
    return b;
  }

  private boolean divide() {
    int best = 0;
    for (int b = 1; b < size; b++) {
      best = gain[b] > gain[best] ? b : best;
    }
    if (!(gain[best] > 0)) {
      return false;
    }
    int end = to[best];
    to[best] = cut[best];
    parent[size] = best;
    box(cut[best], end);
    look(best);
    return true;
  }

  private void box(int start, int end) {
    from[size] = start;
    to[size] = end;
    look(size++);
  }

  /** Finds where a group would be divided and what that would take away. */
  private void look(int b) {
    gain[b] = 0;
    if (to[b] - from[b] < 2) {
      return;
    }
    double[] sum = new double[AXES];
    double weight = 0;
    for (int i = from[b]; i < to[b]; i++) {
      weight += weights[order[i]];
      add(sum, order[i], 1);
    }
    sort(b, widest(b, sum, weight));
    double[] left = new double[AXES];
    double leftWeight = 0;
    for (int i = from[b]; i < to[b] - 1; i++) {
      leftWeight += weights[order[i]];
      add(left, order[i], 1);
      double now = between(left, leftWeight, sum, weight);
      if (now > gain[b]) {
        gain[b] = now;
        cut[b] = i + 1;
      }
    }
  }

  private void add(double[] sum, int colour, int sign) {
    for (int k = 0; k < AXES; k++) {
      sum[k] += sign * weights[colour] * places[colour * AXES + k];
    }
  }

  /** The squared error that goes away if the means of both parts replace the mean of all. */
  private static double between(double[] left, double leftWeight, double[] all, double weight) {
    double squares = 0;
    for (int k = 0; k < AXES; k++) {
      double d = left[k] / leftWeight - (all[k] - left[k]) / (weight - leftWeight);
      squares += d * d;
    }
    return squares * leftWeight * (weight - leftWeight) / weight;
  }

  private int widest(int b, double[] sum, double weight) {
    double[] squares = new double[AXES];
    for (int i = from[b]; i < to[b]; i++) {
      for (int k = 0; k < AXES; k++) {
        double d = places[order[i] * AXES + k] - sum[k] / weight;
        squares[k] += weights[order[i]] * d * d;
      }
    }
    int axis = 0;
    for (int k = 1; k < AXES; k++) {
      axis = squares[k] > squares[axis] ? k : axis;
    }
    return axis;
  }

  private void sort(int b, int axis) {
    long[] keys = new long[to[b] - from[b]];
    for (int i = 0; i < keys.length; i++) {
      int colour = order[from[b] + i];
      // Places lie within 256 of zero; thousands of a level tell them well enough apart.
      long key = Math.round(1000 * (places[colour * AXES + axis] + 256));
      keys[i] = key << 32 | colour;
    }
    Arrays.sort(keys);
    for (int i = 0; i < keys.length; i++) {
      order[from[b] + i] = (int) keys[i];
    }
  }
}
