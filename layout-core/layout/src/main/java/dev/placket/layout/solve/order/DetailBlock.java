package dev.placket.layout.solve.order;

import java.util.ArrayList;
import java.util.List;

/**
 * A way to set details in lines, in the order given.
 *
 * @param lines the rows from top to bottom, or the columns from left to right
 * @param upright whether the lines are columns
 */
record DetailBlock(List<List<Integer>> lines, boolean upright) {
  /**
   * The ways worth trying, the tidier first: one row, one column, full grids, grids with a short
   * last row, rows that wrap where they come out evenly wide, columns evenly high.
   *
   * @param group the details in their order
   * @param width of each flat by its number, with its gap
   * @param height the same
   */
  static List<DetailBlock> of(List<Integer> group, double[] width, double[] height) {
    int k = group.size();
    List<DetailBlock> all = new ArrayList<>();
    add(all, new DetailBlock(equal(group, k), false));
    add(all, new DetailBlock(List.of(List.copyOf(group)), true));
    for (int columns = 2; columns < k; columns++) {
      if (k % columns == 0) {
        add(all, new DetailBlock(equal(group, columns), false));
      }
    }
    for (int columns = 2; columns < k; columns++) {
      add(all, new DetailBlock(equal(group, columns), false));
    }
    for (int lines = 2; lines < k; lines++) {
      add(all, new DetailBlock(even(group, lines, width), false));
    }
    for (int lines = 2; lines <= k / 2; lines++) {
      add(all, new DetailBlock(even(group, lines, height), true));
    }
    return all;
  }

  /** Rows of so many, the last one perhaps shorter. */
  static DetailBlock grid(List<Integer> group, int columns) {
    return new DetailBlock(equal(group, columns), false);
  }

  /** Whether all lines have one length. */
  boolean isGrid() {
    return lines.stream().allMatch(l -> l.size() == lines.get(0).size());
  }

  private static void add(List<DetailBlock> all, DetailBlock block) {
    if (!all.contains(block)) {
      all.add(block);
    }
  }

  private static List<List<Integer>> equal(List<Integer> group, int length) {
    List<List<Integer>> lines = new ArrayList<>();
    for (int from = 0; from < group.size(); from += length) {
      lines.add(List.copyOf(group.subList(from, Math.min(group.size(), from + length))));
    }
    return lines;
  }

  /**
   * So many lines whose longest is as short as it can be; of equals, the one with more in its first
   * lines. O(k² × lines).
   */
  static List<List<Integer>> even(List<Integer> group, int lines, double[] size) {
    int k = group.size();
    double[][] best = new double[lines + 1][k + 1];
    int[][] end = new int[lines + 1][k + 1];
    for (double[] row : best) {
      java.util.Arrays.fill(row, Double.POSITIVE_INFINITY);
    }
    best[0][k] = 0;
    for (int l = 1; l <= lines; l++) {
      for (int from = k - 1; from >= 0; from--) {
        double sum = 0;
        for (int to = from + 1; to <= k; to++) {
          sum += size[group.get(to - 1)];
          double longest = Math.max(sum, best[l - 1][to]);
          if (longest <= best[l][from]) {
            best[l][from] = longest;
            end[l][from] = to;
          }
        }
      }
    }
    List<List<Integer>> all = new ArrayList<>();
    int from = 0;
    for (int l = lines; l > 0; l--) {
      all.add(List.copyOf(group.subList(from, end[l][from])));
      from = end[l][from];
    }
    return all;
  }
}
