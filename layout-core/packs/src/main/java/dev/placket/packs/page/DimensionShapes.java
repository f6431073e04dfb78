package dev.placket.packs.page;

import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import dev.placket.packs.dimensions.LaidDimension;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** What is drawn of a line of measure beside its code, in points on the sheet, y down. */
final class DimensionShapes {
  private static final double ARROW = Length.mm(LaidDimension.ARROW_MM).pt();

  private DimensionShapes() {}

  /** The line and its extension lines; a line ends within its arrowheads. */
  static Path2D lines(LaidDimension dimension) {
    Path2D path = new Path2D.Double();
    for (List<PlanePoint> stroke : dimension.strokes()) {
      path.moveTo(stroke.get(0).x(), stroke.get(0).y());
      stroke.subList(1, stroke.size()).forEach(p -> path.lineTo(p.x(), p.y()));
    }
    return path;
  }

  /** White under the code, so that lines of the drawing do not run through it. */
  static Shape ground(LaidDimension dimension) {
    return new Rectangle2D.Double(
        dimension.box().left(),
        dimension.box().top(),
        dimension.box().width(),
        dimension.box().height());
  }

  /** The arrowheads at both ends. */
  static Shape arrows(LaidDimension dimension) {
    Path2D path = new Path2D.Double();
    List<PlanePoint> line = dimension.line();
    List<PlanePoint> back = new ArrayList<>(line);
    Collections.reverse(back);
    path.append(LeaderShapes.arrow(line.get(0), tail(line), ARROW), false);
    path.append(LeaderShapes.arrow(back.get(0), tail(back), ARROW), false);
    return path;
  }

  /**
   * Where the arrowhead at the beginning of a line comes from: along a curve, its own length on.
   */
  private static PlanePoint tail(List<PlanePoint> line) {
    PlanePoint tip = line.get(0);
    return line.stream()
        .skip(1)
        .filter(p -> Math.hypot(p.x() - tip.x(), p.y() - tip.y()) >= ARROW)
        .findFirst()
        .orElse(line.get(line.size() - 1));
  }
}
