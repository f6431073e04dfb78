package dev.placket.layout.solve.conflict;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * Finds the preferred minimal conflict of a set of demands by divide and conquer.
 *
 * <p>After Junker, QuickXplain: Preferred Explanations and Relaxations for Over-Constrained
 * Problems, AAAI 2004: O(k log(n/k)) checks for a conflict of k among n demands.
 *
 * @param <T> a demand
 */
final class PreferredConflict<T> {
  private final Predicate<List<T>> holds;

  /**
   * With the check that decides.
   *
   * @param holds whether all demands of the list can hold together; fewer demands never hold worse
   */
  PreferredConflict(Predicate<List<T>> holds) {
    this.holds = holds;
  }

  /**
   * The conflict in the order of the demands; empty if all hold together.
   *
   * @param demands the more preferred first
   */
  List<T> among(List<T> demands) {
    if (holds.test(demands)) {
      return List.of();
    }
    List<T> found = split(List.of(), false, demands);
    return demands.stream().filter(found::contains).toList();
  }

  private List<T> split(List<T> background, boolean grown, List<T> demands) {
    if (grown && !holds.test(background)) {
      return List.of();
    }
    if (demands.size() <= 1) {
      return demands;
    }
    List<T> first = demands.subList(0, demands.size() / 2);
    List<T> second = demands.subList(demands.size() / 2, demands.size());
    List<T> inSecond = split(joined(background, first), true, second);
    List<T> inFirst = split(joined(background, inSecond), !inSecond.isEmpty(), first);
    return joined(inFirst, inSecond);
  }

  private static <T> List<T> joined(List<T> a, List<T> b) {
    List<T> both = new ArrayList<>(a);
    both.addAll(b);
    return both;
  }
}
