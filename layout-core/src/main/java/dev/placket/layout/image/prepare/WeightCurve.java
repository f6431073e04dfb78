package dev.placket.layout.image.prepare;

/**
 * How many bytes a picture takes at a density: a power of it, through two densities at which it was
 * encoded. Line art grows with little more than its edges (power 1.3 to 1.5), photographs with
 * their area (power 2).
 *
 * @param least bytes at any density: what a file takes without pixels
 * @param factor bytes over the power of the density
 * @param power of the density
 * @param most pixels per inch beyond which the picture has no more pixels to give; infinite for a
 *     drawing
 */
public record WeightCurve(double least, double factor, double power, double most) {
  /** Header, density and end of a PNG, and what deflate needs to begin. */
  private static final double EMPTY = 150;

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException with them, unless all are above zero or {@code least} is 0
   */
  public WeightCurve {
    if (!(least >= 0) || !(factor > 0) || !(power > 0) || !(most > 0)) {
      throw new IllegalArgumentException(
          "a weight curve of " + least + ", " + factor + ", " + power + " up to " + most);
    }
  }

  /**
   * Through two measurements.
   *
   * @param low pixels per inch of the first; above zero
   * @param lowBytes what it took
   * @param high of the second; above {@code low}
   * @param highBytes what that took
   * @param most as in the record
   */
  public static WeightCurve through(
      double low, long lowBytes, double high, long highBytes, double most) {
    double one = Math.max(1, lowBytes - EMPTY);
    double two = Math.max(one * (1 + 1e-9), highBytes - EMPTY);
    double power = Math.max(0.1, Math.log(two / one) / Math.log(high / low));
    return new WeightCurve(EMPTY, two / Math.pow(high, power), power, most);
  }

  /** Bytes expected at a density; no more than at {@link #most()}. */
  public double bytes(double perInch) {
    return least + factor * Math.pow(Math.min(perInch, most), power);
  }
}
