package dev.placket.layout.callout;

import java.util.Arrays;

/**
 * The least total length of the leaders still to be drawn once a set of labels stands above: by
 * dynamic programming over sets, crossings allowed. O(2^n n) for n labels.
 */
final class StackLengths {
  private final LabelStack stack;
  private final LeaderPath path;
  private final double[] rest;
  private final double[] tops;

  StackLengths(LabelStack stack, LeaderPath path) {
    this.stack = stack;
    this.path = path;
    int sets = 1 << stack.count();
    rest = new double[sets];
    tops = new double[sets];
    tops[0] = stack.top();
    for (int set = 1; set < sets; set++) {
      int one = Integer.numberOfTrailingZeros(set);
      int others = set & (set - 1);
      tops[set] = stack.below(one, tops[others], Integer.bitCount(others));
    }
    Arrays.fill(rest, Double.POSITIVE_INFINITY);
    rest[sets - 1] = 0;
    for (int set = sets - 2; set >= 0; set--) {
      for (int i = 0; i < stack.count(); i++) {
        if ((set >> i & 1) == 0) {
          rest[set] = Math.min(rest[set], length(i, set) + rest[set | 1 << i]);
        }
      }
    }
  }

  /** The top of the label that stands under these. */
  double top(int above) {
    return tops[above];
  }

  /** The length of a label's leaders, where it stands under these. */
  double length(int label, int above) {
    return stack.length(path, label, tops[above]);
  }

  /** The least sum of all labels that are not among these. */
  double rest(int above) {
    return rest[above];
  }
}
