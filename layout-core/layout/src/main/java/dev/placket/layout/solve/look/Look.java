package dev.placket.layout.solve.look;

import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.PlacedBoxes;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.sheet.SheetWindow;
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;

/**
 * How a fit looks, by the measures of Ngo, Teo and Byrne, Modelling interface aesthetics,
 * Information Sciences 152 (2003); the formulas come from memory.
 *
 * <p>Objects are the inked boxes, the frame is what the windows span. Each measure lies from 0 to
 * 1, higher being the nearer to what the authors call pleasing.
 *
 * @param balance equal weight left and right, above and below
 * @param equilibrium the centre of all ink in the middle
 * @param symmetry the quarters mirror one another
 * @param sequence weight falls from the upper left to the lower right
 * @param cohesion shapes are like the shape of the whole
 * @param unity few sizes, little space between
 * @param proportion sides in pleasing ratios
 * @param simplicity few objects and few lines on which they stand
 * @param density half of the frame is covered
 * @param regularity few lines and few different spaces
 * @param economy few sizes
 * @param homogeneity as many objects in each quarter
 * @param rhythm quarters alike in place and area
 */
public record Look(
    double balance,
    double equilibrium,
    double symmetry,
    double sequence,
    double cohesion,
    double unity,
    double proportion,
    double simplicity,
    double density,
    double regularity,
    double economy,
    double homogeneity,
    double rhythm) {
  /**
   * The measures of a fit. O(n²) for n flats.
   *
   * @param request what was asked
   * @param fit the answer
   */
  public static Look of(FitRequest request, Fit fit) {
    List<Rect> inks = new ArrayList<>();
    for (int i = 0; i < request.flats().size(); i++) {
      Flat f = request.flats().get(i);
      inks.add(PlacedBoxes.ink(f, fit.placement(f.id())).toBox());
    }
    Rect frame = null;
    for (SheetWindow w : request.sheet().windows()) {
      Rect b = request.sheet().box(w);
      frame = frame == null ? b : span(frame, b);
    }
    return of(frame == null ? request.sheet().inside() : frame, inks);
  }

  /**
   * The measures of boxes in a frame. O(n²) for n boxes.
   *
   * @param frame what they lie in
   * @param boxes one or more, with an area
   */
  public static Look of(Rect frame, List<Rect> boxes) {
    LookQuarters quarters = new LookQuarters(frame, boxes);
    LookLines lines = new LookLines(boxes);
    LookShapes shapes = new LookShapes(frame, boxes);
    int n = boxes.size();
    return new Look(
        quarters.balance(),
        shapes.equilibrium(),
        quarters.symmetry(),
        quarters.sequence(),
        shapes.cohesion(),
        (1 - (lines.sizes() - 1.0) / n + shapes.closeness()) / 2,
        shapes.proportion(),
        3.0 / (lines.upright() + lines.level() + n),
        shapes.density(),
        lines.regularity(),
        1.0 / lines.sizes(),
        quarters.homogeneity(),
        quarters.rhythm());
  }

  /** The mean of all measures, which the authors call order and complexity. */
  public double order() {
    double sum = balance + equilibrium + symmetry + sequence + cohesion + unity + proportion;
    return (sum + simplicity + density + regularity + economy + homogeneity + rhythm) / 13;
  }

  static Rect span(Rect a, Rect b) {
    return new Rect(
        Math.min(a.left(), b.left()),
        Math.min(a.top(), b.top()),
        Math.max(a.right(), b.right()),
        Math.max(a.bottom(), b.bottom()));
  }
}
