package dev.placket.layout.solve.conflict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/**
 * Junker (AAAI 2004) defines the preferred conflict; here every subset of up to eight demands is
 * tried.
 */
class PreferredConflictTest {
  private static final int DEMANDS = 8;

  @Property(tries = 300)
  void findsThePreferredOfAllMinimalConflicts(@ForAll("cores") List<Set<Integer>> cores) {
    List<Integer> all = IntStream.range(0, DEMANDS).boxed().toList();
    List<Integer> found = new PreferredConflict<Integer>(d -> holds(cores, d)).among(all);
    assertEquals(byExhaustion(cores), found);
  }

  @Property(tries = 300)
  void leavingOutAnyOneDemandCures(@ForAll("cores") List<Set<Integer>> cores) {
    List<Integer> all = IntStream.range(0, DEMANDS).boxed().toList();
    List<Integer> found = new PreferredConflict<Integer>(d -> holds(cores, d)).among(all);
    assertEquals(cores.isEmpty(), found.isEmpty());
    assertTrue(found.isEmpty() || !holds(cores, found));
    for (Integer one : found) {
      List<Integer> rest = new ArrayList<>(found);
      rest.remove(one);
      assertTrue(holds(cores, rest));
      assertFalse(rest.contains(one));
    }
  }

  @Provide
  Arbitrary<List<Set<Integer>>> cores() {
    return Arbitraries.integers()
        .between(0, DEMANDS - 1)
        .set()
        .ofMinSize(1)
        .ofMaxSize(4)
        .list()
        .ofMaxSize(4);
  }

  private static boolean holds(List<Set<Integer>> cores, List<Integer> demands) {
    return cores.stream().noneMatch(demands::containsAll);
  }

  /**
   * The least conflict in the antilexicographic order: it avoids the least preferred demands first.
   */
  private static List<Integer> byExhaustion(List<Set<Integer>> cores) {
    List<List<Integer>> conflicts = new ArrayList<>();
    for (int bits = 1; bits < 1 << DEMANDS; bits++) {
      int b = bits;
      List<Integer> set =
          IntStream.range(0, DEMANDS).filter(i -> (b >> i & 1) == 1).boxed().toList();
      if (!holds(cores, set)) {
        conflicts.add(set);
      }
    }
    // Read as binary numbers with the least preferred demand as the highest digit, the preferred
    // conflict is the smallest
    // that is also minimal; supersets are larger numbers, so the smallest of all is minimal.
    Comparator<List<Integer>> antilex =
        Comparator.comparingInt(s -> s.stream().mapToInt(i -> 1 << i).sum());
    return conflicts.stream()
        .min(antilex)
        .map(c -> List.copyOf(new TreeSet<>(c)))
        .orElse(List.of());
  }
}
