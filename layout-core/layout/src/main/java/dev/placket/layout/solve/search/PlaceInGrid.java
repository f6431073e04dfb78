package dev.placket.layout.solve.search;

import dev.placket.layout.solve.model.Arrangement;
import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.model.Shapes;
import org.jspecify.annotations.Nullable;

/**
 * Equal footprints in one clear rectangle, as a regular grid in their order.
 *
 * <p>Of rectangles w by h that keep a gap g, a rectangle W by H holds floor((W+g)/(w+g)) ×
 * floor((H+g)/(h+g)) and no more: grown by the gap, each covers one of the points that lie (w+g,
 * h+g) apart, and no two cover the same one. So counting proves the largest scale without a search.
 */
final class PlaceInGrid {
  private static final int HALVINGS = 200;

  private final Model model;
  private final Shapes shapes;

  PlaceInGrid(Model model, Plan plan) {
    this.model = model;
    this.shapes = new Shapes(model, plan.anchorX(), plan.anchorY());
  }

  /**
   * The grid at the largest scale.
   *
   * @param low no t below this is wanted
   * @param high no t above this is possible
   * @return null if footprints or rooms differ, if something is held, or if they have no room
   */
  @Nullable Arrangement largest(double low, double high) {
    if (!isUniform() || count(low) < model.n) {
      return null;
    }
    double fits = low;
    double over = high;
    for (int k = 0; k < HALVINGS && over - fits > Math.ulp(over); k++) {
      double middle = (fits + over) / 2;
      if (count(middle) >= model.n) {
        fits = middle;
      } else {
        over = middle;
      }
    }
    return grid(count(high) >= model.n ? high : fits);
  }

  private boolean isUniform() {
    for (int i = 0; i < model.n; i++) {
      boolean alike =
          model.space[i] == model.space[0]
              && model.flats.get(i).ink().equals(model.flats.get(0).ink())
              && model.flats.get(i).surround().equals(model.flats.get(0).surround())
              && !model.flats.get(i).held().any()
              && sameScale(i);
      for (int j = 0; j < i; j++) {
        alike &= model.gap[i][j] == model.gap[1][0];
      }
      if (!alike) {
        return false;
      }
    }
    int rowByRow = Model.A_LEFT | Model.A_ABOVE;
    for (byte options : model.options) {
      if ((options & rowByRow) != rowByRow) {
        return false;
      }
    }
    return model.space[0].rooms().length == 1;
  }

  private boolean sameScale(int i) {
    int a = model.scales.classOf[i];
    int b = model.scales.classOf[0];
    return model.scales.ratio[i] == model.scales.ratio[0]
        && model.scales.base[a] == model.scales.base[b]
        && model.scales.least[a] == model.scales.least[b]
        && model.scales.greatest[a] == model.scales.greatest[b];
  }

  private long count(double t) {
    return (long) columns(t) * rows(t);
  }

  private int columns(double t) {
    double[] room = model.space[0].rooms()[0];
    return along(room[2] - room[0], shapes.at(t).width(0));
  }

  private int rows(double t) {
    double[] room = model.space[0].rooms()[0];
    return along(room[3] - room[1], shapes.at(t).height(0));
  }

  private int along(double length, double size) {
    double gap = model.n > 1 ? model.gap[1][0] : 0;
    double slack = model.span * 1e-12;
    return (int) Math.min(model.n, Math.floor((length + gap + slack) / (size + gap)));
  }

  /** Row by row, with as few columns as leave the rows their number. */
  private Arrangement grid(double t) {
    int rows = rows(t);
    int columns = (model.n + rows - 1) / rows;
    double[] room = model.space[0].rooms()[0];
    double gap = model.n > 1 ? model.gap[1][0] : 0;
    double[] x = new double[model.n];
    double[] y = new double[model.n];
    shapes.at(t);
    for (int i = 0; i < model.n; i++) {
      x[i] = room[0] + shapes.left[i] + i % columns * (shapes.width(i) + gap);
      y[i] = room[1] + shapes.up[i] + i / columns * (shapes.height(i) + gap);
    }
    return new Arrangement(t, x, y);
  }
}
