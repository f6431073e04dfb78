package dev.placket.pictures.prepare;

import dev.placket.layout.density.DensityTargets;
import dev.placket.pictures.base.PictureException;
import java.util.ArrayList;
import java.util.List;

/**
 * Learns how the weight of a picture grows with its density, from copies at the soft limit, at the
 * aim and half-way: what lies between is foreseen without being encoded, within some per cent.
 */
public final class Weighing {
  private Weighing() {}

  /** What a ready picture takes in the file that it is meant for. */
  @FunctionalInterface
  public interface Packed {
    /**
     * Its bytes.
     *
     * @throws PictureException if its pixels cannot be read
     */
    long bytes(ReadyPicture ready) throws PictureException;
  }

  /**
   * The curve of a picture at its printed size.
   *
   * @param targets soft limit and aim
   * @param packed what counts as its weight
   * @throws PictureException if its pixels cannot be read
   */
  public static WeightCurve of(ToPrint what, DensityTargets targets, Packed packed)
      throws PictureException {
    List<WeightCurve.Point> points = new ArrayList<>();
    for (double at : densities(targets.soft(), Math.min(targets.aim(), what.most()))) {
      points.add(new WeightCurve.Point(at, packed.bytes(what.ready(at))));
    }
    return new WeightCurve(points, what.most());
  }

  private static double[] densities(double low, double high) {
    return high > low ? new double[] {low, (low + high) / 2, high} : new double[] {high};
  }
}
