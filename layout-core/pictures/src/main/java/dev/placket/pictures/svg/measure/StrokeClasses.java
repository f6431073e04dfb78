package dev.placket.pictures.svg.measure;

import dev.placket.pictures.base.OutlineLines;
import dev.placket.pictures.shape.InkBoxes;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.Map;
import java.util.TreeMap;
import org.apache.batik.gvt.GraphicsNode;
import org.jspecify.annotations.Nullable;

/** Sorts the lines of a drawing by their widths, and measures how much is drawn with each. */
public final class StrokeClasses {
  /** Of the drawn length, what a width needs at least to be the outline's. */
  private static final double OUTLINE = 0.15;

  /** Widths that agree to so many parts of themselves are one. */
  private static final double PARTS = 50;

  /** The corner of a square cap, in halves of the width. */
  private static final double SQUARE_CAP = Math.sqrt(2);

  private final Map<Double, Double> lengths = new TreeMap<>(java.util.Comparator.reverseOrder());
  private double reach;

  private StrokeClasses() {}

  /**
   * The outline of a drawing; null where it has no lines.
   *
   * @param shown the part that is shown, in drawing units
   */
  public static @Nullable OutlineLines of(
      GraphicsNode node, AffineTransform toUnits, Rectangle2D shown) {
    StrokeClasses classes = new StrokeClasses();
    Strokes.each(node, toUnits, classes::add);
    DrawnBounds bounds = DrawnBounds.ofPaths(shown);
    bounds.addRoot(node, toUnits);
    Rectangle2D box = bounds.box();
    double all = classes.lengths.values().stream().mapToDouble(l -> l).sum();
    if (box == null || all == 0 || box.getWidth() <= 0 || box.getHeight() <= 0) {
      return null;
    }
    for (Map.Entry<Double, Double> each : classes.lengths.entrySet()) {
      if (each.getValue() >= OUTLINE * all) {
        return new OutlineLines(each.getKey(), classes.reach, InkBoxes.inked(box));
      }
    }
    // Lines of very many widths: the widest.
    double widest = classes.lengths.keySet().iterator().next();
    return new OutlineLines(widest, classes.reach, InkBoxes.inked(box));
  }

  private void add(Strokes.Pen pen) {
    double size = Math.sqrt(Math.abs(pen.at().getDeterminant()));
    double width = pen.stroke().getLineWidth() * size;
    if (width <= 0) {
      return;
    }
    double known =
        lengths.keySet().stream()
            .filter(w -> Math.abs(w - width) * PARTS < w)
            .findFirst()
            .orElse(width);
    lengths.merge(known, length(pen.shape(), pen.at()), Double::sum);
    reach = Math.max(reach, width / 2 * factor(pen.stroke()));
  }

  private static double factor(BasicStroke stroke) {
    double cap = stroke.getEndCap() == BasicStroke.CAP_SQUARE ? SQUARE_CAP : 1;
    boolean mitred = stroke.getLineJoin() == BasicStroke.JOIN_MITER;
    return mitred ? Math.max(cap, stroke.getMiterLimit()) : cap;
  }

  private static double length(Shape shape, AffineTransform at) {
    double[] c = new double[6];
    double sum = 0;
    double x = 0;
    double y = 0;
    double startX = 0;
    double startY = 0;
    Rectangle2D box = at.createTransformedShape(shape).getBounds2D();
    double flat = Math.max(1e-9, Math.max(box.getWidth(), box.getHeight()) / 500);
    for (PathIterator i = shape.getPathIterator(at, flat); !i.isDone(); i.next()) {
      int kind = i.currentSegment(c);
      double toX = kind == PathIterator.SEG_CLOSE ? startX : c[0];
      double toY = kind == PathIterator.SEG_CLOSE ? startY : c[1];
      if (kind == PathIterator.SEG_MOVETO) {
        startX = toX;
        startY = toY;
      } else {
        sum += Math.sqrt((toX - x) * (toX - x) + (toY - y) * (toY - y));
      }
      x = toX;
      y = toY;
    }
    return sum;
  }
}
