package dev.placket.packs.measure;

import java.util.List;

/**
 * Sizes that are graded along one line: all sizes of a style, or those of one length or age group.
 *
 * @param name unique among the groups; empty where there is but one
 * @param sizes from small to large
 * @param base the size that steps go outward from: the sample size, or what stands for it here;
 *     empty where there is none and values are typed
 */
public record SizeGroup(String name, List<String> sizes, String base) {
  /**
   * Copies the list and checks the base.
   *
   * @throws IllegalArgumentException if there is no size, or the base is none of them
   */
  public SizeGroup {
    sizes = List.copyOf(sizes);
    if (sizes.isEmpty() || !base.isEmpty() && !sizes.contains(base)) {
      throw new IllegalArgumentException("the base '" + base + "' of " + sizes);
    }
  }
}
