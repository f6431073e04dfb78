package dev.placket.pictures.svg.measure;

import dev.placket.pictures.base.Ground;
import dev.placket.pictures.svg.bridge.BoxPairs;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
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
 *
 * <p>White ink does not count unless there is no other, so that a white sheet drawn behind a
 * garment is ground here as it is in a raster.
 */
public final class DrawnBounds {
  /**
   * Over so many pairs of segments that may cross, a shape that leaves its clip is bounded by both
   * their boxes.
   */
  private static final int CUT_PAIRS = 20_000;

  /** A sheet may fall short of the edge of the view by this share. */
  private static final double EDGE = 1e-4;

  /** The corner of a square cap, in halves of the width. */
  private static final double SQUARE_CAP = 1.4143;

  /** More than the rounding of stroked outlines, as a share. */
  private static final double ROUNDING = 1.001;

  private static final int WHITE = 250;
  private static final int FAINT = 8;

  private final Rectangle2D.@Nullable Double[] boxes = new Rectangle2D.Double[2];
  private @Nullable Rectangle2D view;
  private Ground ground = Ground.TRANSPARENT;

  /** The box of all ink that is not white, else of all ink, else null. */
  public @Nullable Rectangle2D box() {
    return boxes[0] != null ? boxes[0] : boxes[1];
  }

  /** White or a colour, where the first thing drawn is a sheet over all of the view. */
  public Ground ground() {
    return ground;
  }

  /** Adds the root and all it holds, as far as the view shows it. */
  public void addRoot(GraphicsNode node, AffineTransform toUnits, Rectangle2D shown) {
    double x = shown.getWidth() * EDGE;
    double y = shown.getHeight() * EDGE;
    view =
        new Rectangle2D.Double(
            shown.getX() + x,
            shown.getY() + y,
            shown.getWidth() - 2 * x,
            shown.getHeight() - 2 * y);
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
      inner = cut(at.createTransformedShape(node.getClip().getClipPath()), clip);
    }
    if (node instanceof CompositeGraphicsNode group) {
      for (Object child : group.getChildren()) {
        add((GraphicsNode) child, at, inner);
      }
    } else if (node instanceof ShapeNode shape) {
      add(shape.getShapePainter(), at, inner);
    } else if (node instanceof TextNode text && text.getOutline() != null) {
      include(text.getOutline(), at, inner, 0);
    } else if (node.getPrimitiveBounds() != null) {
      include(node.getPrimitiveBounds(), at, inner, 0);
    }
  }

  private void add(@Nullable ShapePainter painter, AffineTransform at, Shape clip) {
    if (painter instanceof CompositeShapePainter several) {
      for (int i = 0; i < several.getShapePainterCount(); i++) {
        add(several.getShapePainter(i), at, clip);
      }
    } else if (painter instanceof FillShapePainter fill) {
      int kind = kind(fill.getPaint());
      if (kind >= 0) {
        behind(fill, at, kind);
        if (mayAdd(fill.getShape(), at, 0, kind)) {
          include(fill.getShape(), at, clip, kind);
        }
      }
    } else if (painter instanceof StrokeShapePainter stroke) {
      int kind = kind(stroke.getPaint());
      if (kind >= 0
          && stroke.getStroke() != null
          && mayAdd(stroke.getShape(), at, reach(stroke.getStroke()), kind)) {
        include(stroke.getStroke().createStrokedShape(stroke.getShape()), at, clip, kind);
      }
    } else if (painter instanceof MarkerShapePainter markers
        && markers.getPaintedBounds2D() != null) {
      include(markers.getPaintedBounds2D(), at, clip, 0);
    }
  }

  /**
   * Whether a shape may reach beyond the ink so far. Most of a garment lies inside its outline, and
   * neither its strokes nor its cuts need be found for that.
   *
   * @param reach the most by which a stroke goes beyond the shape, in the shape's units
   */
  private boolean mayAdd(Shape shape, AffineTransform at, double reach, int kind) {
    if (kind == 1 && boxes[0] != null) {
      return false;
    }
    Rectangle2D.Double had = boxes[kind];
    if (had == null || !Double.isFinite(reach)) {
      return true;
    }
    Rectangle2D b = shape.getBounds2D();
    Rectangle2D most =
        new Rectangle2D.Double(
            b.getX() - reach,
            b.getY() - reach,
            b.getWidth() + 2 * reach,
            b.getHeight() + 2 * reach);
    Rectangle2D there = at.createTransformedShape(most).getBounds2D();
    return !(there.getMinX() >= had.getMinX()
        && there.getMinY() >= had.getMinY()
        && there.getMaxX() <= had.getMaxX()
        && there.getMaxY() <= had.getMaxY());
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

  private void behind(FillShapePainter fill, AffineTransform at, int kind) {
    Rectangle2D all = view;
    if (all == null || boxes[0] != null || !(fill.getPaint() instanceof Color c)) {
      return;
    }
    if (c.getAlpha() == 255 && at.createTransformedShape(fill.getShape()).contains(all)) {
      ground = kind == 1 ? Ground.OPAQUE_WHITE : Ground.OPAQUE_OTHER;
    }
  }

  /** 0 for ink, 1 for white ink, -1 for none. */
  private static int kind(@Nullable Paint paint) {
    if (paint == null) {
      return -1;
    }
    if (!(paint instanceof Color c)) {
      return 0;
    }
    if (c.getAlpha() <= FAINT) {
      return -1;
    }
    return Math.min(c.getRed(), Math.min(c.getGreen(), c.getBlue())) >= WHITE ? 1 : 0;
  }

  private void include(Shape shape, AffineTransform at, Shape clip, int kind) {
    Shape there = at.createTransformedShape(shape);
    Rectangle2D b = PathBounds.of(there);
    if (b == null) {
      return;
    }
    if (!clip.contains(b)) {
      b = PathBounds.of(cut(there, clip));
    }
    if (b != null && b.getWidth() > 0 && b.getHeight() > 0) {
      Rectangle2D.Double had = boxes[kind];
      Rectangle2D.Double sum = new Rectangle2D.Double();
      sum.setRect(had == null ? b : had.createUnion(b));
      boxes[kind] = sum;
    }
  }

  private static Shape cut(Shape shape, Shape clip) {
    if (BoxPairs.of(CUT_PAIRS, shape, clip) <= CUT_PAIRS) {
      Area area = new Area(shape);
      area.intersect(new Area(clip));
      return area;
    }
    Rectangle2D a = PathBounds.of(shape);
    Rectangle2D b = PathBounds.of(clip);
    if (a == null || b == null || !a.intersects(b)) {
      return new Rectangle2D.Double();
    }
    return a.createIntersection(b);
  }
}
