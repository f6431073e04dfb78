package dev.placket.packs.measure;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How a measure grows from size to size, in millimetres.
 *
 * @param add what the base of the group has more than the sample size; zero in its own group
 * @param step from each size to the next larger one; zero and negative ones are allowed
 * @param from other steps, from these sizes outward: the step by which the size is reached from its
 *     neighbour towards the base, and all beyond it
 */
public record GradeRule(BigDecimal add, BigDecimal step, Map<String, BigDecimal> from) {
  /** Copies the map. */
  public GradeRule {
    from = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(from));
  }

  /**
   * The values of a group. O(n) for n sizes.
   *
   * @param group which has a base
   * @param sample the value at the sample size
   * @throws IllegalArgumentException if a step begins at the base or at none of the sizes
   */
  Map<String, BigDecimal> values(SizeGroup group, BigDecimal sample) {
    int base = group.sizes().indexOf(group.base());
    if (base < 0) {
      throw new IllegalArgumentException("steps, but no sample size for " + group.sizes());
    }
    for (String size : from.keySet()) {
      int at = group.sizes().indexOf(size);
      if (at < 0 || at == base) {
        throw new IllegalArgumentException(
            at < 0
                ? "a step from the size '" + size + "', which is not among " + group.sizes()
                : "a step from the size '" + size + "', which steps go outward from");
      }
    }
    BigDecimal[] values = new BigDecimal[group.sizes().size()];
    values[base] = sample.add(add);
    for (int way : new int[] {1, -1}) {
      BigDecimal now = step;
      for (int i = base + way; i >= 0 && i < values.length; i += way) {
        now = from.getOrDefault(group.sizes().get(i), now);
        values[i] = way > 0 ? values[i - 1].add(now) : values[i + 1].subtract(now);
      }
    }
    Map<String, BigDecimal> all = new LinkedHashMap<>();
    for (int i = 0; i < values.length; i++) {
      all.put(group.sizes().get(i), values[i]);
    }
    return all;
  }
}
