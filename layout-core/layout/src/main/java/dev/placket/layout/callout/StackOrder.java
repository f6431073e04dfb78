package dev.placket.layout.callout;

import dev.placket.layout.units.PlanePoint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Seeks the order of a stack whose leaders are shortest and do not cross: branch and bound. */
final class StackOrder {
  /** Places tried before the search ends with what it has. */
  private static final int STEPS = 200_000;

  /** Two sums are one where they differ by rounding. */
  private static final double ROUNDING = 1e-12;

  private final LabelStack stack;
  private final LeaderPath path;
  private final StackLengths lengths;
  private final List<ClearDisc> clear;
  private final int[] order;
  private final List<List<PlanePoint>> leaders = new ArrayList<>();
  private int @Nullable [] best;
  private double least = Double.POSITIVE_INFINITY;
  private int steps;

  StackOrder(LabelStack stack, LeaderPath path, List<ClearDisc> clear) {
    this.stack = stack;
    this.path = path;
    this.clear = clear;
    this.lengths = new StackLengths(stack, path);
    this.order = new int[stack.count()];
  }

  /** The labels from top to bottom; null if there is no order, or none was found in time. */
  int @Nullable [] run() {
    place(0, 0, 0);
    return best;
  }

  /** The sum for the order found. */
  double length() {
    return least;
  }

  /** No order has a smaller one. */
  double bound() {
    return steps < STEPS ? least : lengths.rest(0);
  }

  private void place(int depth, int above, double sum) {
    if (sum + lengths.rest(above) >= least * (1 - ROUNDING) || ++steps >= STEPS) {
      return;
    }
    if (depth == stack.count()) {
      least = sum;
      best = order.clone();
      return;
    }
    for (int label : candidates(above)) {
      List<List<PlanePoint>> its = stack.leaders(path, label, lengths.top(above));
      if (its.stream().allMatch(leader -> isClear(leader, label))) {
        order[depth] = label;
        int before = leaders.size();
        leaders.addAll(its);
        place(depth + 1, above | 1 << label, sum + lengths.length(label, above));
        leaders.subList(before, leaders.size()).clear();
      }
    }
  }

  /** The labels that may stand next, the most hopeful first. */
  private int[] candidates(int above) {
    return IntStream.range(0, stack.count())
        .filter(i -> (above >> i & 1) == 0 && Double.isFinite(with(i, above)))
        .boxed()
        .sorted(Comparator.comparingDouble(i -> with(i, above)))
        .mapToInt(i -> i)
        .toArray();
  }

  private double with(int label, int above) {
    return lengths.length(label, above) + lengths.rest(above | 1 << label);
  }

  private boolean isClear(List<PlanePoint> leader, int label) {
    for (List<PlanePoint> other : leaders) {
      if (Apart.cross(leader, other) || Apart.meets(other, ClearDisc.dot(leader.get(0)))) {
        return false;
      }
    }
    for (int i = 0; i < stack.count(); i++) {
      if (i != label && Apart.meetsOne(leader, stack.labels().get(i).spots())) {
        return false;
      }
    }
    return clear.stream().noneMatch(s -> Apart.meets(leader, s));
  }
}
