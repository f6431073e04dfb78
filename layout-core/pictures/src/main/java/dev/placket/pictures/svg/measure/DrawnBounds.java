package dev.placket.pictures.svg.measure;

import dev.placket.pictures.base.Ground;
import dev.placket.pictures.shape.InkBoxes;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import org.apache.batik.bridge.TextNode;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.CompositeShapePainter;
import org.apache.batik.gvt.FillShapePainter;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.MarkerShapePainter;
import org.apache.batik.gvt.ShapeNode;
import org.apache.batik.gvt.ShapePainter;
import org.apache.batik.gvt.StrokeShapePainter;
import org.jspecify.annotations.Nullable;

/**
 * Where the ink of a drawing lies, from its geometry: strokes included, clips applied, curves to
 * their true extremes.
 */
public final class DrawnBounds {
  private final InkBoxes boxes;
  private final Rectangle2D shown;

  /** Whether strokes count with their width, not by their paths alone. */
  private final boolean wide;

  private DrawnBounds(Rectangle2D shown, boolean wide) {
    this.shown = shown;
    this.boxes = new InkBoxes(shown);
    this.wide = wide;
  }

  /** Measures the part of a drawing that is shown, in drawing units. */
  public DrawnBounds(Rectangle2D shown) {
    this(shown, true);
  }

  /** Measures the paths of a drawing, without the width of its lines. */
  public static DrawnBounds ofPaths(Rectangle2D shown) {
    return new DrawnBounds(shown, false);
  }

  /** The corner of a square cap, in halves of the width. */
  private static final double SQUARE_CAP = 1.4143;

  /** More than the rounding of stroked outlines, as a share. */
  private static final double ROUNDING = 1.001;

  /** The box of all ink; null if there is none. */
  public @Nullable Rectangle2D box() {
    return boxes.box();
  }

  /** The box of all that is drawn, white included ({@link InkBoxes#withGround}). */
  public @Nullable Rectangle2D withGround() {
    return boxes.withGround();
  }

  /** White or a colour, where the first thing drawn is a sheet over all of the view. */
  public Ground ground() {
    return boxes.ground();
  }

  /** Adds the root and all it holds, as far as the view shows it. */
  public void addRoot(GraphicsNode node, AffineTransform toUnits) {
    add(node, toUnits, shown);
  }

  private void add(GraphicsNode node, AffineTransform parent, Shape clip) {
    if (!node.isVisible() && !(node instanceof CompositeGraphicsNode)) {
      return;
    }
    AffineTransform at = new AffineTransform(parent);
    if (node.getTransform() != null) {
      at.concatenate(node.getTransform());
    }
    Shape inner = clip;
    if (node.getClip() != null && node.getClip().getClipPath() != null) {
      inner = InkBoxes.cut(at.createTransformedShape(node.getClip().getClipPath()), clip);
    }
    if (node instanceof CompositeGraphicsNode group) {
      for (Object child : group.getChildren()) {
        add((GraphicsNode) child, at, inner);
      }
    } else if (node instanceof ShapeNode shape) {
      add(shape.getShapePainter(), at, inner);
    } else if (node instanceof TextNode text && text.getOutline() != null) {
      include(text.getOutline(), at, inner, InkBoxes.Kind.INK);
    } else if (node.getPrimitiveBounds() != null) {
      include(node.getPrimitiveBounds(), at, inner, InkBoxes.Kind.INK);
    }
  }

  private void add(@Nullable ShapePainter painter, AffineTransform at, Shape clip) {
    if (painter instanceof CompositeShapePainter several) {
      for (int i = 0; i < several.getShapePainterCount(); i++) {
        add(several.getShapePainter(i), at, clip);
      }
    } else if (painter instanceof FillShapePainter fill) {
      boxes.fill(fill.getShape(), at, fill.getPaint(), clip);
    } else if (painter instanceof StrokeShapePainter stroke) {
      InkBoxes.Kind kind = InkBoxes.kind(stroke.getPaint());
      if (kind != null
          && stroke.getStroke() != null
          && boxes.mayAdd(stroke.getShape(), at, reach(stroke.getStroke()), kind)) {
        Shape drawn =
            wide ? stroke.getStroke().createStrokedShape(stroke.getShape()) : stroke.getShape();
        include(drawn, at, clip, kind);
      }
    } else if (painter instanceof MarkerShapePainter markers
        && markers.getPaintedBounds2D() != null) {
      include(markers.getPaintedBounds2D(), at, clip, InkBoxes.Kind.INK);
    }
  }

  /** Half the width, longer at square caps and at mitres; infinite where that is not known. */
  private static double reach(Stroke stroke) {
    if (!(stroke instanceof BasicStroke line)) {
      return Double.POSITIVE_INFINITY;
    }
    boolean mitred = line.getLineJoin() == BasicStroke.JOIN_MITER;
    double longest = mitred ? Math.max(SQUARE_CAP, line.getMiterLimit()) : SQUARE_CAP;
    return line.getLineWidth() / 2 * longest * ROUNDING;
  }

  private void include(Shape shape, AffineTransform at, Shape clip, InkBoxes.Kind kind) {
    boxes.add(at.createTransformedShape(shape), clip, kind);
  }
}
