package dev.placket.pictures.svg.mend;

import dev.placket.pictures.base.PictureNote;
import java.awt.Color;
import java.awt.Paint;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Set;
import org.apache.batik.ext.awt.LinearGradientPaint;
import org.apache.batik.ext.awt.MultipleGradientPaint;
import org.apache.batik.ext.awt.RadialGradientPaint;

/**
 * Keeps gradients within what their numbers can show: one that passes far too often over what it
 * paints, or hardly changes on it, becomes a colour or a sharp edge.
 */
final class GradientMending {
  /** More periods over one shape than any print resolves: 0.02 mm each on 200 mm. */
  private static final double PERIODS = 10_000;

  /** Of one period, too little to show in 8-bit colour. */
  private static final double STILL = 1e-4;

  /** Further from its beginning than this many periods, floats no longer tell where it is. */
  private static final double FAR = 1e6;

  private final Set<PictureNote> notes;

  GradientMending(Set<PictureNote> notes) {
    this.notes = notes;
  }

  Paint mended(LinearGradientPaint g, Rectangle2D box) {
    Point2D from = g.getStartPoint();
    double dx = g.getEndPoint().getX() - from.getX();
    double dy = g.getEndPoint().getY() - from.getY();
    double length = Math.hypot(dx, dy);
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (double[] p : PaintMending.corners(box, g.getTransform())) {
      double along = (p[0] - from.getX()) * (dx / length) + (p[1] - from.getY()) * (dy / length);
      least = Math.min(least, along / length);
      most = Math.max(most, along / length);
    }
    if (!Double.isFinite(most - least)) {
      return last(g);
    }
    if (most - least < STILL) {
      return at(g, (least + most) / 2);
    }
    boolean padded = g.getCycleMethod() == MultipleGradientPaint.NO_CYCLE;
    if (padded && (least >= 1 || most <= 0)) {
      return at(g, least >= 1 ? 1 : 0);
    }
    if (most - least <= PERIODS && Math.abs(least) + Math.abs(most) < FAR) {
      return g;
    }
    return padded ? stretched(g, dx, dy, (most - least) / PERIODS) : average(g);
  }

  Paint mended(RadialGradientPaint g, Rectangle2D box) {
    double radius = g.getRadius();
    double far = 0;
    double near = Double.POSITIVE_INFINITY;
    for (double[] p : PaintMending.corners(box, g.getTransform())) {
      double away = Math.hypot(p[0] - g.getCenterPoint().getX(), p[1] - g.getCenterPoint().getY());
      far = Math.max(far, away / radius);
      near = Math.min(near, away / radius);
    }
    double off =
        g.getFocusPoint().distance(g.getCenterPoint()) / (radius > 0 ? radius : Float.MIN_VALUE);
    if (!Double.isFinite(far)) {
      return last(g);
    }
    if (far + off < STILL) {
      return at(g, 0);
    }
    if (far <= PERIODS) {
      return g;
    }
    return g.getCycleMethod() == MultipleGradientPaint.NO_CYCLE ? last(g) : average(g);
  }

  /** As sharp an edge, at the same place, from numbers that can be drawn. */
  private static Paint stretched(LinearGradientPaint g, double dx, double dy, double times) {
    Point2D to = g.getEndPoint();
    return new LinearGradientPaint(
        new Point2D.Double(to.getX() - dx * times, to.getY() - dy * times),
        to,
        g.getFractions(),
        g.getColors(),
        g.getCycleMethod(),
        g.getColorSpace(),
        g.getTransform());
  }

  /** SVG 2, section 14.2.2: a gradient without length paints its last colour. */
  private static Color last(MultipleGradientPaint g) {
    Color[] colors = g.getColors();
    return colors[colors.length - 1];
  }

  /** The colour so many periods from the beginning. */
  private static Color at(MultipleGradientPaint g, double periods) {
    double t = Math.max(0, Math.min(1, periods));
    if (g.getCycleMethod() == MultipleGradientPaint.REPEAT) {
      t = periods - Math.floor(periods);
    } else if (g.getCycleMethod() == MultipleGradientPaint.REFLECT) {
      double two = periods - 2 * Math.floor(periods / 2);
      t = two > 1 ? 2 - two : two;
    }
    float[] f = g.getFractions();
    Color[] colors = g.getColors();
    for (int i = 1; i < f.length; i++) {
      if (t < f[i]) {
        double share = i == 1 && t <= f[0] ? 0 : (t - f[i - 1]) / (f[i] - f[i - 1]);
        return MeanColour.of(colors[i - 1], 1 - share, colors[i], share);
      }
    }
    return colors[colors.length - 1];
  }

  private Color average(MultipleGradientPaint g) {
    notes.add(
        PictureNote.plain(
            "a gradient that repeats too finely to print is drawn in its average colour"));
    float[] f = g.getFractions();
    Color[] colors = g.getColors();
    MeanColour mean = new MeanColour();
    mean.add(colors[0], f[0]);
    for (int i = 1; i < f.length; i++) {
      double half = (f[i] - f[i - 1]) / 2;
      mean.add(colors[i - 1], half);
      mean.add(colors[i], half);
    }
    mean.add(colors[colors.length - 1], 1 - f[f.length - 1]);
    return mean.colour();
  }
}
