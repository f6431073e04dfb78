package dev.placket.layout.solve.model;

import dev.placket.layout.flat.Held;
import java.util.Arrays;

/**
 * What an arrangement has to keep besides the model: anchors, which of them are level with one
 * another, and which options each pair still has.
 *
 * @param anchorX where in its ink each flat is anchored, as a share of the width
 * @param anchorY the same as a share of the height
 * @param tiesX pairs of flats whose anchors share their x
 * @param tiesY pairs of flats whose anchors share their y
 * @param options what each pair may do, by {@link Model#pair}
 * @param twins pairs of which the first does not stand right of the second
 * @param reads pairs of which the second is not read first: its footprint ends below the top of the
 *     first
 */
public record Plan(
    double[] anchorX,
    double[] anchorY,
    int[][] tiesX,
    int[][] tiesY,
    byte[] options,
    int[][] twins,
    Reads[] reads) {
  private static final int[][] NONE = new int[0][];
  private static final Reads[] ANY_ORDER = new Reads[0];

  /**
   * Two flats that are read in their order where they stand beside one another.
   *
   * <p>The anchor of the first lies at most so far below that of the second that the second does
   * not stand wholly above it, at any scale from a least one on. The distance does not depend on
   * the scale, so an arrangement that keeps it keeps it at every smaller scale as well.
   *
   * @param first the flat that is read first
   * @param second the flat that is read after it
   * @param below how far the anchor of the first may lie below that of the second, in points
   * @param from the least scale at which that is true
   */
  public record Reads(int first, int second, double below, double from) {
    /** The pair with the distance for footprints about some anchors at its least scale. */
    public Reads about(Shapes atLeast) {
      return new Reads(first, second, atLeast.up[first] + atLeast.down[second] - SURE, from);
    }
  }

  /** Rounding moves an edge by less, in points. */
  private static final double SURE = 1e-6;

  /** Nothing but the model: anchored at the middle of the top, or at an edge that is held. */
  public static Plan free(Model model) {
    double[] x = new double[model.n];
    for (int i = 0; i < model.n; i++) {
      x[i] = model.flats.get(i).held().left() == null ? 0.5 : 0;
    }
    return new Plan(x, new double[model.n], NONE, NONE, model.options, model.twins, ANY_ORDER);
  }

  /** This plan with fewer options; twins are told apart by them, so they are no longer swapped. */
  public Plan withOptions(byte[] fewer) {
    return new Plan(anchorX, anchorY, tiesX, tiesY, fewer, NONE, reads);
  }

  /** This plan with an order of reading. */
  public Plan withReads(Reads[] order) {
    return new Plan(anchorX, anchorY, tiesX, tiesY, options, twins, order);
  }

  /** The held x of a flat's anchor, or NaN. */
  public double heldX(Model model, int i) {
    Held h = model.flats.get(i).held();
    return h.left() == null ? Double.NaN : h.left().pt();
  }

  /** The held y of a flat's anchor, or NaN. */
  public double heldY(Model model, int i) {
    Held h = model.flats.get(i).held();
    return h.top() == null ? Double.NaN : h.top().pt();
  }

  /** The same with its own copy of the options. */
  Plan copy() {
    return new Plan(
        anchorX.clone(),
        anchorY.clone(),
        tiesX,
        tiesY,
        Arrays.copyOf(options, options.length),
        twins,
        reads);
  }
}
