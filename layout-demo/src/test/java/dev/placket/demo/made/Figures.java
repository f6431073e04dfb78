package dev.placket.demo.made;

import com.fasterxml.jackson.databind.JsonNode;
import dev.placket.demo.made.PaintedPaths.Figure;
import dev.placket.demo.made.PaintedPaths.Stroked;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Where the drawings of a sheet have their ink, by the paths of the PDF. */
final class Figures {
  private static final double MM = 25.4 / 72;

  /** Points by which a curve may be off. */
  private static final double FLATNESS = 1e-3;

  private Figures() {}

  /**
   * The ink of each flat of a sheet in millimetres from the top left; a picture's is where {@code
   * fit.json} puts it.
   */
  static List<Rectangle2D> ink(MadePack made, int sheet) throws IOException {
    List<JsonNode> placements = made.placements(sheet);
    double height = made.sheets().get(sheet).path("paper").path("height").asDouble();
    List<Figure> figures = PaintedPaths.figures(made.pdf(), sheet);
    List<Rectangle2D> ink = new ArrayList<>();
    for (int i = 0; i < figures.size(); i++) {
      ink.add(
          figures.get(i).strokes().isEmpty()
              ? stated(placements.get(i).path("inkedBox"))
              : painted(figures.get(i), height));
    }
    return ink;
  }

  /** A box of {@code fit.json} in millimetres. */
  static Rectangle2D stated(JsonNode box) {
    double left = box.path("left").asDouble() * MM;
    double top = box.path("top").asDouble() * MM;
    double right = box.path("right").asDouble() * MM;
    double bottom = box.path("bottom").asDouble() * MM;
    return new Rectangle2D.Double(left, top, right - left, bottom - top);
  }

  /** Curves as short lines: the box of a curve may be that of its control points. */
  private static Path2D flat(Shape shape) {
    Path2D flat = new Path2D.Double();
    flat.append(shape.getPathIterator(null, FLATNESS), false);
    return flat;
  }

  private static Rectangle2D painted(Figure figure, double height) {
    Rectangle2D all = null;
    for (Stroked s : figure.strokes()) {
      int cap = s.butt() ? BasicStroke.CAP_BUTT : BasicStroke.CAP_ROUND;
      BasicStroke stroke = new BasicStroke((float) s.width(), cap, BasicStroke.JOIN_ROUND);
      Rectangle2D box = flat(stroke.createStrokedShape(s.path())).getBounds2D();
      all = all == null ? box : all.createUnion(box);
    }
    Rectangle2D b = all == null ? new Rectangle2D.Double() : all;
    return new Rectangle2D.Double(
        b.getMinX() * MM, (height - b.getMaxY()) * MM, b.getWidth() * MM, b.getHeight() * MM);
  }
}
