package dev.placket.layout.solve.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/**
 * The scale of every class of flats as a function of the common scale t: its target clamped by its
 * limits; and the t at which the rules for front and details allow those scales.
 *
 * <p>A class is a scale group, or a flat that is in none. Every function is continuous, made of
 * straight pieces, and never falls as t grows; that is what the search relies on.
 */
public final class Scales {
  /**
   * {@code scale(of) <= factor * scale(under) - less}, between the common scales of two classes.
   *
   * @param of the class that is limited
   * @param under the class that limits it
   * @param factor above zero, without a unit
   * @param less in points per drawing unit
   * @param flat the number of the flat that is held under {@code over}
   * @param over the number of the flat that it stays under
   */
  public record Cap(int of, int under, double factor, double less, int flat, int over) {}

  private static final double SLACK = 1e-12;
  private static final double FAR = 1e12;

  public final int[] classOf;
  public final double[] ratio;
  public final double[] base;
  public final double[] least;
  public final double[] greatest;
  public final Cap[] caps;

  /** The least common scale of each class at which its own details stay under its own views. */
  final double[] floor;

  /**
   * Whether a class that reaches the one it has to stay under follows it, as in growth; else the
   * common scale ends there.
   */
  private final boolean follows;

  /** Common scales at the t last asked for, and how fast they grow just below it. */
  public final double[] value;

  final double[] slope;

  Scales(
      int[] classOf,
      double[] ratio,
      double[] base,
      double[] least,
      double[] greatest,
      double[] floor,
      Cap[] caps) {
    this(classOf, ratio, base, least, greatest, floor, caps, false);
  }

  private Scales(
      int[] classOf,
      double[] ratio,
      double[] base,
      double[] least,
      double[] greatest,
      double[] floor,
      Cap[] caps,
      boolean follows) {
    this.classOf = classOf;
    this.ratio = ratio;
    this.base = base;
    this.least = least;
    this.greatest = greatest;
    this.floor = floor;
    this.caps = caps;
    this.follows = follows;
    this.value = new double[base.length];
    this.slope = new double[base.length];
  }

  /** The same classes for other flats. */
  Scales of(int[] classes, double[] ratios) {
    return new Scales(classes, ratios, base, least, greatest, floor, caps, follows);
  }

  /**
   * The same rules between classes of other sizes, where one follows another that it stays under.
   */
  public Scales following(double[] from, double[] least, double[] greatest) {
    return new Scales(classOf, ratio, from, least, greatest, floor, caps, true);
  }

  /** Works out all classes at t. O(classes), and caps where they follow. */
  public void at(double t) {
    for (int k = 0; k < base.length; k++) {
      double aim = base[k] * t;
      boolean low = aim <= least[k];
      boolean high = aim > greatest[k];
      value[k] = high ? greatest[k] : low ? least[k] : aim;
      slope[k] = high || low ? 0 : base[k];
    }
    boolean changed = follows;
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

  /** Whether some scale may grow more slowly from some t on. */
  public boolean bendsDown() {
    boolean bends = follows && caps.length > 0;
    for (double g : greatest) {
      bends |= g < Double.POSITIVE_INFINITY;
    }
    return bends;
  }

  /** Whether every class has a scale at t that its limits and the rules allow. */
  boolean allowedAt(double t) {
    at(t);
    for (int k = 0; k < base.length; k++) {
      double lowest = Math.max(least[k], floor[k]) * (1 - SLACK);
      if (!(value[k] >= lowest) || !(value[k] > 0)) {
        return false;
      }
    }
    for (Cap c : caps) {
      if (breaks(c)) {
        return false;
      }
    }
    return true;
  }

  /** Whether the scales last worked out break a rule. */
  boolean breaks(Cap c) {
    return value[c.of] > (c.factor * value[c.under] - c.less) * (1 + SLACK);
  }

  /**
   * All t that limits and rules allow, as ranges from low to high, the highest first; none above
   * {@link #end}. Between two neighbouring corners all scales are straight in t, so there a rule
   * holds throughout or not at all. O(corners × (classes + caps)).
   */
  List<double[]> allowed() {
    List<double[]> ranges = new ArrayList<>();
    double[] at = corners();
    for (int k = at.length - 1; k > 0; k--) {
      if (!allowedAt(between(at[k - 1], at[k]))) {
        continue;
      }
      double[] above = ranges.isEmpty() ? null : ranges.get(ranges.size() - 1);
      if (above != null && above[0] == at[k]) {
        above[0] = at[k - 1];
      } else {
        ranges.add(new double[] {at[k - 1], at[k]});
      }
    }
    return ranges;
  }

  private static double between(double low, double high) {
    return high == Double.POSITIVE_INFINITY ? 2 * low + 1 : (low + high) / 2;
  }

  /** Where a class meets a limit or a rule begins or ceases to hold, from 0 to the end, sorted. */
  private double[] corners() {
    double end = end();
    TreeSet<Double> corners = new TreeSet<>(List.of(0.0, end));
    for (int k = 0; k < base.length; k++) {
      add(corners, least[k] / base[k], end);
      add(corners, floor[k] / base[k], end);
      add(corners, greatest[k] / base[k], end);
    }
    List<Double> bends = List.copyOf(corners);
    for (int k = 0; k + 1 < bends.size(); k++) {
      // Between two bends all scales are straight, and so is what a rule leaves: it has one zero.
      double between = between(bends.get(k), bends.get(k + 1));
      at(between);
      for (Cap c : caps) {
        double over = value[c.of] - (c.factor * value[c.under] - c.less);
        double zero = between - over / (slope[c.of] - c.factor * slope[c.under]);
        if (zero > bends.get(k) && zero < bends.get(k + 1)) {
          corners.add(zero);
        }
      }
    }
    return corners.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static void add(TreeSet<Double> corners, double t, double end) {
    if (t > 0 && t < end) {
      corners.add(t);
    }
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
