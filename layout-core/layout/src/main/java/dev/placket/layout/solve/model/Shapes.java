package dev.placket.layout.solve.model;

import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Surround;

/**
 * How far each footprint reaches from its anchor at a common scale t, and how fast that grows.
 *
 * <p>The anchor is a spot of the ink, given as a share of its width and height; equalities between
 * placements tie anchors. From an anchor inside the ink a footprint only ever grows outwards, so an
 * arrangement at some t stays one at any smaller t with the anchors where they are. (A held left
 * edge under a caption wider than the ink is the exception that {@link HeldUnderCaption} mends.)
 */
public final class Shapes {
  public final double[] left;
  public final double[] right;
  public final double[] up;
  public final double[] down;
  public final double[] leftSlope;
  public final double[] rightSlope;
  public final double[] upSlope;
  public final double[] downSlope;

  private final Model model;
  private final double[] anchorX;
  private final double[] anchorY;

  /** The footprints of a model's flats about these anchors, given as shares of the ink's sides. */
  public Shapes(Model model, double[] anchorX, double[] anchorY) {
    this.model = model;
    this.anchorX = anchorX;
    this.anchorY = anchorY;
    int n = model.n;
    left = new double[n];
    right = new double[n];
    up = new double[n];
    down = new double[n];
    leftSlope = new double[n];
    rightSlope = new double[n];
    upSlope = new double[n];
    downSlope = new double[n];
  }

  /** Works out all footprints at t. O(n). */
  public Shapes at(double t) {
    Scales scales = model.scales;
    scales.at(t);
    for (int i = 0; i < model.n; i++) {
      double ratio = scales.ratio[i];
      int k = scales.classOf[i];
      set(i, scales.value[k] * ratio, scales.slope[k] * ratio);
    }
    return this;
  }

  /** The sizes last worked out no longer grow, while something else is varied. */
  public void keepSizes() {
    for (double[] slopes : new double[][] {leftSlope, rightSlope, upSlope, downSlope}) {
      java.util.Arrays.fill(slopes, 0);
    }
  }

  private void set(int i, double scale, double slope) {
    Flat f = model.flats.get(i);
    Surround s = f.surround();
    double ink = scale * f.ink().width();
    double inkSlope = slope * f.ink().width();
    double spare = s.leastWidth().pt() - ink - s.left().pt() - s.right().pt();
    boolean fixed = !Double.isNaN(model.aside[i]);
    double aside = fixed ? model.aside[i] : Math.max(0, spare / 2);
    double asideSlope = !fixed && spare > 0 ? -inkSlope / 2 : 0;
    left[i] = anchorX[i] * ink + s.left().pt() + aside;
    leftSlope[i] = anchorX[i] * inkSlope + asideSlope;
    right[i] = (1 - anchorX[i]) * ink + s.right().pt() + aside;
    rightSlope[i] = (1 - anchorX[i]) * inkSlope + asideSlope;
    double height = scale * f.ink().height();
    double heightSlope = slope * f.ink().height();
    up[i] = anchorY[i] * height + s.top().pt();
    upSlope[i] = anchorY[i] * heightSlope;
    down[i] = (1 - anchorY[i]) * height + s.bottom().pt();
    downSlope[i] = (1 - anchorY[i]) * heightSlope;
  }

  /** The width of a footprint at the t last asked for, in points. */
  public double width(int i) {
    return left[i] + right[i];
  }

  /** The height of a footprint at the t last asked for, in points. */
  public double height(int i) {
    return up[i] + down[i];
  }
}
