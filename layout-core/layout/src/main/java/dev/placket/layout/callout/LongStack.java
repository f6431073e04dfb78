package dev.placket.layout.callout;

import dev.placket.layout.units.PlanePoint;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * An order without crossings for more labels than can be searched: by height, then by exchanges.
 */
final class LongStack {
  private final LabelStack stack;
  private final LeaderPath path;
  private final List<ClearDisc> clear;

  LongStack(LabelStack stack, LeaderPath path, List<ClearDisc> clear) {
    this.stack = stack;
    this.path = path;
    this.clear = clear;
  }

  /** The labels from top to bottom; null if exchanges of neighbours leave a crossing. */
  int @Nullable [] run() {
    Integer[] all = IntStream.range(0, stack.count()).boxed().toArray(Integer[]::new);
    Arrays.sort(all, Comparator.comparingDouble(i -> stack.labels().get(i).level()));
    int[] order = Arrays.stream(all).mapToInt(i -> i).toArray();
    int faults = faults(order);
    for (int pass = 0; pass < order.length && faults > 0; pass++) {
      for (int i = 1; i < order.length && faults > 0; i++) {
        int[] other = order.clone();
        other[i] = order[i - 1];
        other[i - 1] = order[i];
        int its = faults(other);
        if (its < faults) {
          order = other;
          faults = its;
        }
      }
    }
    return faults == 0 ? order : null;
  }

  /** Crossings, spots met, and leaders without room for their incline. */
  private int faults(int[] order) {
    List<List<PlanePoint>> leaders = new ArrayList<>();
    int faults = 0;
    double top = stack.top();
    for (int slot = 0; slot < order.length; slot++) {
      int label = order[slot];
      faults += Double.isFinite(stack.length(path, label, top)) ? 0 : 1;
      List<List<PlanePoint>> its = stack.leaders(path, label, top);
      for (List<PlanePoint> leader : its) {
        faults += (int) leaders.stream().filter(other -> clash(leader, other)).count();
        faults += (int) clear.stream().filter(s -> Apart.meets(leader, s)).count();
      }
      leaders.addAll(its);
      top = stack.below(label, top, slot);
    }
    return faults;
  }

  private static boolean clash(List<PlanePoint> leader, List<PlanePoint> other) {
    return Apart.meetsOne(leader, other.subList(0, 1))
        || Apart.meetsOne(other, leader.subList(0, 1))
        || Apart.cross(leader, other);
  }

  /** What no order can do with less: every leader goes at least straight across. */
  double bound() {
    return stack.labels().stream()
        .flatMap(l -> l.spots().stream())
        .mapToDouble(spot -> stack.edge() - spot.x())
        .sum();
  }
}
