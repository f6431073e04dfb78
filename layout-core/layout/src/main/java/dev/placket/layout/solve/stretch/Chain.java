package dev.placket.layout.solve.stretch;

import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.model.Shapes;

/**
 * The constraints of one relative order along one axis, and the earliest and latest anchors that
 * keep them: longest paths over the flats.
 */
public final class Chain {
  private final int n;
  private final double slack;
  private final double[] near;
  private final double[] far;
  private final double[] nearSlope;
  private final double[] farSlope;
  private final double[] from;
  private final double[] to;
  private final double[] held;
  private final int[][] ties;
  private final Plan.Reads[] reads;
  private final int[] first;
  private final int[] second;
  private final double[] gap;

  /** How fast gaps and walls grow inwards with what is varied; 0 unless spaces are widened. */
  private final double[] gapSlope;

  private final double[] fromSlope;
  private final double[] toSlope;

  public final double[] earliest;
  public final double[] latest;

  /** How fast the earliest anchors grow with t. */
  private final double[] growth;

  private Chain(
      Model model,
      double[][] reach,
      double[][] walls,
      double[] held,
      int[][] ties,
      Plan.Reads[] reads,
      int[][] arcs) {
    n = model.n;
    this.reads = reads;
    slack = model.span * 1e-12;
    near = reach[0];
    far = reach[1];
    nearSlope = reach[2];
    farSlope = reach[3];
    from = walls[0];
    to = walls[1];
    this.held = held;
    this.ties = ties;
    first = arcs[0];
    second = arcs[1];
    gap = new double[first.length];
    gapSlope = new double[first.length];
    fromSlope = new double[n];
    toSlope = new double[n];
    for (int k = 0; k < first.length; k++) {
      gap[k] = model.gap[first[k]][second[k]];
    }
    earliest = new double[n];
    latest = new double[n];
    growth = new double[n];
  }

  /** The constraints on x. */
  public static Chain onX(Model model, Plan plan, Shapes s, PairRelations r, double[] guess) {
    double[] held = new double[model.n];
    for (int i = 0; i < model.n; i++) {
      held[i] = plan.heldX(model, i);
    }
    return new Chain(
        model,
        new double[][] {s.left, s.right, s.leftSlope, s.rightSlope},
        new double[][] {r.fromX(), r.toX()},
        held,
        plan.tiesX(),
        new Plan.Reads[0],
        arcs(model.n, r.sides(), Model.A_LEFT, Model.B_LEFT, guess));
  }

  /** The constraints on y. */
  public static Chain onY(Model model, Plan plan, Shapes s, PairRelations r, double[] guess) {
    double[] held = new double[model.n];
    for (int i = 0; i < model.n; i++) {
      held[i] = plan.heldY(model, i);
    }
    return new Chain(
        model,
        new double[][] {s.up, s.down, s.upSlope, s.downSlope},
        new double[][] {r.fromY(), r.toY()},
        held,
        plan.tiesY(),
        plan.reads(),
        arcs(model.n, r.sides(), Model.A_ABOVE, Model.B_ABOVE, guess));
  }

  /** The arcs of one axis, sorted by where they start, so that one pass mostly settles them. */
  private static int[][] arcs(int n, byte[] sides, int aFirst, int bFirst, double[] guess) {
    Integer[] order = new Integer[n];
    for (int i = 0; i < n; i++) {
      order[i] = i;
    }
    java.util.Arrays.sort(order, (p, q) -> Double.compare(guess[p], guess[q]));
    int[] from = new int[sides.length];
    int[] to = new int[sides.length];
    int count = 0;
    for (int i : order) {
      for (int j = 0; j < n; j++) {
        if (i != j) {
          int side = sides[Model.pair(Math.min(i, j), Math.max(i, j))];
          if (side == (i < j ? aFirst : bFirst)) {
            from[count] = i;
            to[count++] = j;
          }
        }
      }
    }
    return new int[][] {java.util.Arrays.copyOf(from, count), java.util.Arrays.copyOf(to, count)};
  }

  /**
   * Pushes all anchors as early as they go.
   *
   * @return false if the constraints run in a circle that never settles
   */
  public boolean settleEarliest() {
    for (int i = 0; i < n; i++) {
      earliest[i] = from[i] + near[i];
      growth[i] = nearSlope[i] + fromSlope[i];
      if (held[i] > earliest[i]) {
        earliest[i] = held[i];
        growth[i] = 0;
      }
    }
    for (int round = 0; round <= 2 * n + 1; round++) {
      if (!pushOn()) {
        return true;
      }
    }
    return false;
  }

  private boolean pushOn() {
    boolean moved = false;
    for (int k = 0; k < first.length; k++) {
      int a = first[k];
      int b = second[k];
      moved |=
          push(
              b,
              earliest[a] + far[a] + gap[k] + near[b],
              growth[a] + farSlope[a] + nearSlope[b] + gapSlope[k]);
    }
    for (int[] tie : ties) {
      moved |= push(tie[1], earliest[tie[0]], growth[tie[0]]);
      moved |= push(tie[0], earliest[tie[1]], growth[tie[1]]);
    }
    for (Plan.Reads r : reads) {
      moved |= push(r.second(), earliest[r.first()] - r.below(), growth[r.first()]);
    }
    return moved;
  }

  private boolean push(int i, double at, double slope) {
    if (at > earliest[i] + slack / 16) {
      earliest[i] = at;
      growth[i] = slope;
      return true;
    }
    return false;
  }

  /** Pulls all anchors as late as they go; only after the earliest are settled. */
  public void settleLatest() {
    for (int i = 0; i < n; i++) {
      latest[i] = !Double.isNaN(held[i]) ? held[i] : to[i] - far[i];
    }
    boolean moved = true;
    for (int round = 0; moved && round <= 2 * n + 1; round++) {
      moved = false;
      for (int k = first.length - 1; k >= 0; k--) {
        int a = first[k];
        int b = second[k];
        moved |= pull(a, latest[b] - near[b] - gap[k] - far[a]);
      }
      for (int[] tie : ties) {
        moved |= pull(tie[0], latest[tie[1]]);
        moved |= pull(tie[1], latest[tie[0]]);
      }
      for (Plan.Reads r : reads) {
        moved |= pull(r.first(), latest[r.second()] + r.below());
      }
    }
  }

  private boolean pull(int i, double at) {
    if (at < latest[i] - slack / 16) {
      latest[i] = at;
      return true;
    }
    return false;
  }

  /**
   * Where the tightest path from wall to wall would be just long enough, going by its slope at t: t
   * itself if all fits, minus infinity if no smaller t is known to help.
   */
  public double shrinkTo(double t) {
    double next = t;
    for (int i = 0; i < n; i++) {
      double over = earliest[i] + far[i] - to[i];
      double slope = growth[i] + farSlope[i] + toSlope[i];
      if (!Double.isNaN(held[i]) && earliest[i] - held[i] > over) {
        over = earliest[i] - held[i];
        slope = growth[i];
      }
      if (over > slack) {
        next = Math.min(next, slope > 0 ? t - over / slope : Double.NEGATIVE_INFINITY);
      }
    }
    return next;
  }

  /** How fast the gaps grow, to be set while they are widened; in the order of the arcs. */
  public double[] gapSlopes() {
    return gapSlope;
  }

  /** How fast the walls come nearer; to be set while spaces are widened. */
  public double[] wallSlopes(boolean farSide) {
    return farSide ? toSlope : fromSlope;
  }

  /** Gaps as they stand, to be widened when freedom is spread; in the order of the arcs. */
  public double[] gaps() {
    return gap;
  }

  /** The walls as they stand; changing them changes the constraints. */
  public double[] walls(boolean farSide) {
    return farSide ? to : from;
  }

  /** How much farther the wall before a flat could stand, by the settled anchors. */
  public double spareNear(int i) {
    return latest[i] - near[i] - from[i];
  }

  /** How much nearer the wall after a flat could stand, by the settled anchors. */
  public double spareFar(int i) {
    return to[i] - far[i] - earliest[i];
  }

  /** How much longer an arc could be, by the settled anchors. */
  public double spare(int arc) {
    int a = first[arc];
    int b = second[arc];
    return latest[b] - near[b] - gap[arc] - far[a] - earliest[a];
  }

  /**
   * How far some flats can move as one, the way wanted, until a space at their outside is as small
   * as the least space that any of them has.
   *
   * @param moves which flats move
   * @param at where the anchors stand
   * @param wanted how far to go at most, by its sign before or after
   */
  public double freeMove(boolean[] moves, double[] at, double wanted) {
    double least = Double.POSITIVE_INFINITY;
    double most = Math.abs(wanted);
    for (int k = 0; k < first.length; k++) {
      int a = first[k];
      int b = second[k];
      double spare = at[b] - near[b] - gap[k] - far[a] - at[a];
      least = moves[a] || moves[b] ? Math.min(least, spare) : least;
      boolean closes = wanted > 0 ? moves[a] && !moves[b] : moves[b] && !moves[a];
      most = closes ? Math.min(most, spare) : most;
    }
    for (int i = 0; i < n; i++) {
      if (moves[i]) {
        double before = at[i] - near[i] - from[i];
        double after = to[i] - far[i] - at[i];
        least = Math.min(least, Math.min(before, after));
        most = Math.min(most, !Double.isNaN(held[i]) ? 0 : wanted > 0 ? after : before);
      }
    }
    for (int[] tie : ties) {
      most = moves[tie[0]] == moves[tie[1]] ? most : 0;
    }
    for (Plan.Reads r : reads) {
      most = moves[r.first()] == moves[r.second()] ? most : 0;
    }
    return Math.signum(wanted) * Math.min(Math.abs(wanted), Math.max(0, most - Math.max(0, least)));
  }
}
