package dev.placket.pictures.shape;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.base.Ground;
import java.awt.Color;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import org.jspecify.annotations.Nullable;

/**
 * The box of all ink that is drawn, shape by shape in the order of drawing.
 *
 * <p>White ink does not count unless there is no other, so that a white sheet drawn behind a
 * garment is background here as it is in a raster.
 */
public final class InkBoxes {
  /** What a paint leaves on paper. */
  public enum Kind {
    /** Ink that is seen. */
    INK,
    /** White, or visually the same. */
    WHITE,
    /** A white sheet over all of the view. */
    SHEET
  }

  /**
   * Over so many pairs of segments that may cross, a shape that leaves its clip is bounded by both
   * their boxes.
   */
  private static final int CUT_PAIRS = 20_000;

  /** A sheet may fall short of the edge of the view by this share. */
  private static final double EDGE = 1e-4;

  private static final int WHITE = 250;
  private static final int FAINT = 8;

  private final Rectangle2D.@Nullable Double[] boxes = new Rectangle2D.Double[Kind.values().length];
  private final Rectangle2D shown;
  private final Rectangle2D all;
  private Ground ground = Ground.TRANSPARENT;

  /** No ink yet, in a drawing of which this part is shown. */
  public InkBoxes(Rectangle2D shown) {
    this.shown = shown;
    double x = shown.getWidth() * EDGE;
    double y = shown.getHeight() * EDGE;
    all =
        new Rectangle2D.Double(
            shown.getX() + x,
            shown.getY() + y,
            shown.getWidth() - 2 * x,
            shown.getHeight() - 2 * y);
  }

  /** The box of all ink that is not white, else of all ink, else null. */
  public @Nullable Rectangle2D box() {
    if (boxes[0] != null) {
      return boxes[0];
    }
    return boxes[2] != null ? boxes[2] : boxes[1];
  }

  /** The box of all that is drawn as cloth is: with white, else the white sheet; null if empty. */
  public @Nullable Rectangle2D withGround() {
    Rectangle2D.Double ink = boxes[0];
    boolean cut = ink != null && boxes[2] != null && !all.contains(ink);
    return cut ? shown : covered();
  }

  /** The box of ink and white; of a white sheet where there is nothing else. */
  private @Nullable Rectangle2D covered() {
    Rectangle2D.Double ink = boxes[0];
    Rectangle2D.Double white = boxes[1];
    if (ink == null && white == null) {
      return boxes[2];
    }
    if (ink == null || white == null) {
      return ink == null ? white : ink;
    }
    return ink.createUnion(white);
  }

  /** White or a colour, where the first thing drawn is a sheet over all of the view. */
  public Ground ground() {
    return ground;
  }

  /** A box of ink as a value. */
  public static InkedBox inked(Rectangle2D box) {
    return new InkedBox(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY());
  }

  /** What a paint leaves; null where it leaves nothing. */
  public static @Nullable Kind kind(@Nullable Paint paint) {
    if (paint == null) {
      return null;
    }
    if (!(paint instanceof Color c)) {
      return Kind.INK;
    }
    if (c.getAlpha() <= FAINT) {
      return null;
    }
    boolean white = Math.min(c.getRed(), Math.min(c.getGreen(), c.getBlue())) >= WHITE;
    return white ? Kind.WHITE : Kind.INK;
  }

  /**
   * Adds a filled shape, which may be a sheet behind all that follows.
   *
   * @param at from the units of the shape to drawing units
   */
  public void fill(Shape shape, AffineTransform at, @Nullable Paint paint, Shape clip) {
    Kind kind = kind(paint);
    if (kind == null) {
      return;
    }
    if (boxes[0] == null
        && paint instanceof Color c
        && c.getAlpha() == 255
        && at.createTransformedShape(shape).contains(all)) {
      ground = kind == Kind.WHITE ? Ground.OPAQUE_WHITE : Ground.OPAQUE_OTHER;
      kind = kind == Kind.WHITE ? Kind.SHEET : kind;
    }
    if (mayAdd(shape, at, 0, kind)) {
      add(at.createTransformedShape(shape), clip, kind);
    }
  }

  /**
   * Whether a shape may reach beyond the ink so far. Most of a garment lies inside its outline, and
   * neither its strokes nor its cuts need be found for that.
   *
   * @param at from the units of the shape to drawing units
   * @param reach the most by which a stroke goes beyond the shape, in the shape's units
   */
  public boolean mayAdd(Shape shape, AffineTransform at, double reach, Kind kind) {
    Rectangle2D.Double had = boxes[kind.ordinal()];
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

  /** Adds a shape as far as the clip shows it. */
  public void add(Shape shape, Shape clip, Kind kind) {
    Rectangle2D b = PathBounds.of(shape);
    if (b == null) {
      return;
    }
    if (!clip.contains(b)) {
      b = PathBounds.of(cut(shape, clip));
    }
    if (b != null && b.getWidth() > 0 && b.getHeight() > 0) {
      Rectangle2D.Double had = boxes[kind.ordinal()];
      Rectangle2D.Double sum = new Rectangle2D.Double();
      sum.setRect(had == null ? b : had.createUnion(b));
      boxes[kind.ordinal()] = sum;
    }
  }

  /** The part of a shape that a clip shows. */
  public static Shape cut(Shape shape, Shape clip) {
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
