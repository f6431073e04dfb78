package dev.placket.layout.fit;

import java.util.Arrays;

/**
 * The scale of every class of flats as a function of the common scale t: its target clamped by its
 * limits, and held under other classes where the front has to lead.
 *
 * <p>A class is a scale group, or a flat that is in none. Every function is continuous, made of
 * straight pieces, and never falls as t grows; that is what the search relies on.
 */
final class Scales {
  /**
   * {@code scale(of) <= factor * scale(under) - less}, between the common scales of two classes.
   *
   * @param flat the number of the flat that is held under {@code over}
   * @param over the number of the flat that it stays under
   */
  record Cap(int of, int under, double factor, double less, int flat, int over) {}

  private static final double SLACK = 1e-12;
  private static final double FAR = 1e12;

  final int[] classOf;
  final double[] ratio;
  final double[] base;
  final double[] least;
  final double[] greatest;
  final Cap[] caps;

  /** The least common scale of each class at which its own details stay under its own views. */
  final double[] floor;

  /** Common scales at the t last asked for, and how fast they grow just below it. */
  final double[] value;

  final double[] slope;

  Scales(
      int[] classOf,
      double[] ratio,
      double[] base,
      double[] least,
      double[] greatest,
      double[] floor,
      Cap[] caps) {
    this.classOf = classOf;
    this.ratio = ratio;
    this.base = base;
    this.least = least;
    this.greatest = greatest;
    this.floor = floor;
    this.caps = caps;
    this.value = new double[base.length];
    this.slope = new double[base.length];
  }

  /** The same classes for other flats. */
  Scales of(int[] classes, double[] ratios) {
    return new Scales(classes, ratios, base, least, greatest, floor, caps);
  }

  /** Works out all classes at t. O(classes + caps), repeated while caps hand on what they lower. */
  void at(double t) {
    for (int k = 0; k < base.length; k++) {
      double aim = base[k] * t;
      boolean low = aim <= least[k];
      boolean high = aim > greatest[k];
      value[k] = high ? greatest[k] : low ? least[k] : aim;
      slope[k] = high || low ? 0 : base[k];
    }
    boolean changed = caps.length > 0;
    for (int round = 0; changed && round <= base.length; round++) {
      changed = lower();
    }
  }

  private boolean lower() {
    boolean changed = false;
    for (Cap c : caps) {
      double most = c.factor * value[c.under] - c.less;
      if (most < value[c.of]) {
        value[c.of] = most;
        slope[c.of] = c.factor * slope[c.under];
        changed = true;
      }
    }
    return changed;
  }

  /** Whether every class has a scale that its limits and the rules for the front allow at t. */
  boolean allowedAt(double t) {
    at(t);
    for (int k = 0; k < base.length; k++) {
      double lowest = Math.max(least[k], floor[k]) * (1 - SLACK);
      if (!(value[k] >= lowest) || !(value[k] > 0)) {
        return false;
      }
    }
    return true;
  }

  /** The t at which every class is at its greatest; infinite where one always grows on. */
  double end() {
    at(FAR);
    double[] most = Arrays.copyOf(value, value.length);
    double end = 0;
    for (int k = 0; k < base.length; k++) {
      if (slope[k] != 0) {
        return Double.POSITIVE_INFINITY;
      }
      end = Math.max(end, most[k] / base[k]);
    }
    return end;
  }
}
