package dev.placket.pictures.prepare;

import java.util.Arrays;
import java.util.function.IntUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * The fewest colours, at most 256, by which a picture can be shown so that the difference is not
 * seen: at least 60 dB, both with alpha multiplied in and on white, and no pixel off by more than
 * {@link #FARTHEST}. Depends on nothing but the colours and how often each occurs.
 */
final class FewColours {
  /** 60 dB: the mean squared error is a millionth of the square of 255. */
  private static final double MEAN = 255 * 255 / 1e6;

  /** Levels of 255; a smaller step in a fine line is not seen at 200 pixels to the inch. */
  private static final double FARTHEST = 12;

  private static final int MOST = ColourTable.MOST;
  private static final int AXES = ColourSpace.AXES;

  /** Rounds of moving colours to their nearest group; more change little. */
  private static final int ROUNDS = 4;

  private final int[] colours;
  private final double[] places;
  private final double[] weights;
  private final double all;
  private final ColourBoxes boxes;
  private final int[] nearest;

  private FewColours(ColourCounts counts) {
    this.colours = counts.colours();
    int n = colours.length;
    this.places = new double[n * AXES];
    this.weights = new double[n];
    this.nearest = new int[n];
    double sum = 0;
    for (int i = 0; i < n; i++) {
      ColourSpace.place(colours[i], places, i * AXES);
      weights[i] = counts.count(colours[i]);
      sum += weights[i];
    }
    this.all = sum;
    // What is clear stays clear: nothing is mixed into it.
    this.boxes = new ColourBoxes(places, weights, colours[0] == 0 ? 1 : 0, Math.min(MOST, n));
  }

  /**
   * Which colour stands for which.
   *
   * @param from the colours of the picture, in the order of their values as unsigned numbers
   * @param to the one that stands for each
   */
  record Exchange(int[] from, int[] to) {}

  /** The exchange with fewest colours, or null if even 256 would be seen. */
  static @Nullable Exchange of(ColourCounts counts) {
    FewColours few = new FewColours(counts);
    int high = few.boxes.size();
    int[] best = few.unseen(high);
    if (best == null) {
      return null;
    }
    int low = 0;
    while (high - low > 1) {
      int middle = (low + high) / 2;
      int[] found = few.unseen(middle);
      if (found == null) {
        low = middle;
      } else {
        high = middle;
        best = found;
      }
    }
    return new Exchange(few.colours, best);
  }

  /** What stands for each colour if there are so many groups, or null if that is seen. */
  private int @Nullable [] unseen(int groups) {
    if (groups < 1 || colours[0] == 0 && colours.length > 1 && groups < 2) {
      return null;
    }
    for (int i = 0; i < colours.length; i++) {
      nearest[i] = boxes.group(i, groups);
    }
    int[] palette = means(groups);
    for (int round = 0; ; round++) {
      if (good(palette)) {
        return Arrays.stream(nearest).map(of(palette)).toArray();
      }
      if (round == ROUNDS || !move(palette)) {
        return null;
      }
      palette = means(groups);
    }
  }

  private static IntUnaryOperator of(int[] palette) {
    return g -> palette[g];
  }

  private int[] means(int groups) {
    double[] sums = new double[groups * AXES];
    double[] sumWeights = new double[groups];
    for (int i = 0; i < colours.length; i++) {
      int g = nearest[i];
      sumWeights[g] += weights[i];
      for (int k = 0; k < AXES; k++) {
        sums[g * AXES + k] += weights[i] * places[i * AXES + k];
      }
    }
    int[] palette = new int[groups];
    double[] mean = new double[AXES];
    for (int g = 0; g < groups; g++) {
      for (int k = 0; k < AXES; k++) {
        mean[k] = sumWeights[g] > 0 ? sums[g * AXES + k] / sumWeights[g] : 0;
      }
      palette[g] = ColourSpace.colour(mean);
    }
    return palette;
  }

  private boolean good(int[] palette) {
    double[] stands = places(palette);
    double multiplied = 0;
    double onWhite = 0;
    for (int i = 0; i < colours.length; i++) {
      double m = ColourSpace.multiplied(places, i * AXES, stands, nearest[i] * AXES);
      double w = ColourSpace.onWhite(places, i * AXES, stands, nearest[i] * AXES);
      if (Math.max(m, w) > FARTHEST * FARTHEST) {
        return false;
      }
      multiplied += weights[i] * m;
      onWhite += weights[i] * w;
    }
    return Math.max(multiplied, onWhite) <= MEAN * all;
  }

  private static double[] places(int[] palette) {
    double[] stands = new double[palette.length * AXES];
    for (int g = 0; g < palette.length; g++) {
      ColourSpace.place(palette[g], stands, g * AXES);
    }
    return stands;
  }

  /** Gives each colour to the group whose colour is nearest; what is clear stays by itself. */
  private boolean move(int[] palette) {
    double[] stands = places(palette);
    boolean moved = false;
    int first = colours[0] == 0 ? 1 : 0;
    for (int i = first; i < colours.length; i++) {
      int best = nearest[i];
      double least = distance(i, stands, best, Double.MAX_VALUE);
      for (int g = first; g < palette.length; g++) {
        double d = distance(i, stands, g, least);
        if (d < least) {
          least = d;
          best = g;
        }
      }
      moved |= best != nearest[i];
      nearest[i] = best;
    }
    return moved;
  }

  /** The squared distance, or anything over {@code least} if it is more than that. */
  private double distance(int colour, double[] stands, int group, double least) {
    double sum = 0;
    int p = colour * AXES;
    int s = group * AXES;
    for (int k = 0; k < AXES && sum < least; k++) {
      double d = places[p + k] - stands[s + k];
      sum += d * d;
    }
    return sum;
  }
}
