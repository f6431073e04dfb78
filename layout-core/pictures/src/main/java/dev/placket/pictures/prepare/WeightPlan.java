package dev.placket.pictures.prepare;

import dev.placket.layout.density.DensityTargets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The densities at which the pictures of a pack keep its weight, the least of them as high as
 * possible. All take the same density, between the soft limit and the aim; those that have not so
 * many pixels take what they have.
 *
 * @param densities pixels per inch, in the order of the pictures
 * @param bytes expected of each
 * @param others bytes that are no picture's
 * @param limit most bytes of all
 */
public record WeightPlan(List<Double> densities, List<Double> bytes, double others, long limit) {
  /** 7 MB: mailing adds 37 % to a file, and some mail systems refuse 10 MB (common practice). */
  public static final long DEFAULT_LIMIT = 7_000_000;

  private static final int HALVINGS = 60;

  /** Copies the lists. */
  public WeightPlan {
    densities = List.copyOf(densities);
    bytes = List.copyOf(bytes);
  }

  /**
   * Chooses. O(pictures).
   *
   * @param pictures how each grows with its density
   * @param others bytes of the pack that are no picture's
   * @param limit most bytes of all
   * @param targets soft limit and aim; at the soft limit the plan stays, and is over the limit then
   */
  public static WeightPlan choose(
      List<WeightCurve> pictures, double others, long limit, DensityTargets targets) {
    double low = targets.soft();
    double high = targets.aim();
    double chosen = high;
    if (others + sum(pictures, high) > limit) {
      for (int i = 0; i < HALVINGS; i++) {
        double middle = (low + high) / 2;
        if (others + sum(pictures, middle) > limit) {
          high = middle;
        } else {
          low = middle;
        }
      }
      chosen = low;
    }
    List<Double> densities = new ArrayList<>();
    List<Double> bytes = new ArrayList<>();
    for (WeightCurve picture : pictures) {
      densities.add(Math.min(chosen, picture.most()));
      bytes.add(picture.bytes(chosen));
    }
    return new WeightPlan(densities, bytes, others, limit);
  }

  private static double sum(List<WeightCurve> pictures, double density) {
    return pictures.stream().mapToDouble(p -> p.bytes(density)).sum();
  }

  /** Bytes expected of all. */
  public double total() {
    return others + bytes.stream().mapToDouble(Double::doubleValue).sum();
  }

  /** By how many bytes the limit cannot be kept; 0 if it is kept. */
  public double over() {
    return Math.max(0, total() - limit);
  }

  /** The numbers of the pictures, the heaviest first, equal ones in their order. */
  public List<Integer> heaviest() {
    return IntStream.range(0, bytes.size())
        .boxed()
        .sorted(Comparator.comparing((Integer i) -> bytes.get(i)).reversed())
        .toList();
  }
}
