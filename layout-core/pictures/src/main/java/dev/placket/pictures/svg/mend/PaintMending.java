package dev.placket.pictures.svg.mend;

import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.shape.PathBounds;
import java.awt.Color;
import java.awt.Paint;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.text.AttributedCharacterIterator;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.apache.batik.bridge.TextNode;
import org.apache.batik.ext.awt.LinearGradientPaint;
import org.apache.batik.ext.awt.MultipleGradientPaint;
import org.apache.batik.ext.awt.RadialGradientPaint;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.CompositeShapePainter;
import org.apache.batik.gvt.FillShapePainter;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.Marker;
import org.apache.batik.gvt.MarkerShapePainter;
import org.apache.batik.gvt.PatternPaint;
import org.apache.batik.gvt.ShapeNode;
import org.apache.batik.gvt.ShapePainter;
import org.apache.batik.gvt.StrokeShapePainter;
import org.apache.batik.gvt.text.GVTAttributedCharacterIterator;
import org.apache.batik.gvt.text.TextPaintInfo;
import org.jspecify.annotations.Nullable;

/**
 * Replaces what cannot be drawn as it is built: parts flattened by their transform, gradients and
 * patterns without an inverse, or so fine or so long that their numbers overflow, and masks.
 */
public final class PaintMending {
  private final Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());
  private final Set<PictureNote> notes = new LinkedHashSet<>();
  private final double longest;

  /** How deep in markers and patterns: Batik paints those, the rest is painted by layers. */
  private int repeated;

  /**
   * For one drawing.
   *
   * @param longest side of its view
   */
  public PaintMending(double longest) {
    this.longest = longest;
  }

  /** What was replaced, each kind once. */
  public Set<PictureNote> notes() {
    return notes;
  }

  /** Mends a node and all that it draws with: markers, masks and patterns too. */
  public void mend(GraphicsNode node) {
    if (node.getMask() != null && node.getMask().getMaskNode() != null) {
      mendOnce(node.getMask().getMaskNode());
    }
    if (node instanceof CompositeGraphicsNode group) {
      // By index, from the last: an empty group of Batik's cannot be copied.
      for (int i = group.size() - 1; i >= 0; i--) {
        GraphicsNode child = (GraphicsNode) group.get(i);
        if (isFlat(child.getTransform())) {
          // CSS Transforms 1, section 8: what has no inverse is not displayed.
          group.remove(i);
        } else {
          mend(child);
          if (repeated > 0 && child.getMask() != null) {
            notes.add(
                PictureNote.plain(
                    "a mask in a marker or pattern is drawn with pixels, not with paths"));
            MaskedNode.replace(group, i, longest);
          }
        }
      }
    } else if (node instanceof ShapeNode shape) {
      mend(shape.getShapePainter());
    } else if (node instanceof TextNode text) {
      mend(text);
    }
  }

  private void mendOnce(GraphicsNode node) {
    if (seen.add(node)) {
      mend(node);
    }
  }

  private void mendRepeated(GraphicsNode node) {
    repeated++;
    mendOnce(node);
    repeated--;
  }

  private static boolean isFlat(@Nullable AffineTransform t) {
    if (t == null) {
      return false;
    }
    double d = t.getDeterminant();
    return d == 0 || !Double.isFinite(d + t.getTranslateX() + t.getTranslateY());
  }

  private void mend(@Nullable ShapePainter painter) {
    if (painter instanceof CompositeShapePainter several) {
      for (int i = 0; i < several.getShapePainterCount(); i++) {
        mend(several.getShapePainter(i));
      }
    } else if (painter instanceof FillShapePainter fill) {
      fill.setPaint(mended(fill.getPaint(), PathBounds.of(fill.getShape())));
    } else if (painter instanceof StrokeShapePainter stroke) {
      stroke.setPaint(mended(stroke.getPaint(), PathBounds.of(stroke.getShape())));
    } else if (painter instanceof MarkerShapePainter markers) {
      mend(markers.getStartMarker());
      mend(markers.getMiddleMarker());
      mend(markers.getEndMarker());
    }
  }

  private void mend(@Nullable Marker marker) {
    if (marker != null && marker.getMarkerNode() != null) {
      mendRepeated(marker.getMarkerNode());
    }
  }

  private void mend(TextNode text) {
    AttributedCharacterIterator run = text.getAttributedCharacterIterator();
    if (run == null) {
      return;
    }
    Rectangle2D box = text.getOutline() == null ? null : PathBounds.of(text.getOutline());
    for (char c = run.first(); c != AttributedCharacterIterator.DONE; c = run.next()) {
      Object info = run.getAttribute(GVTAttributedCharacterIterator.TextAttribute.PAINT_INFO);
      if (info instanceof TextPaintInfo paint && seen.add(paint)) {
        paint.fillPaint = mended(paint.fillPaint, box);
        paint.strokePaint = mended(paint.strokePaint, box);
        paint.underlinePaint = mended(paint.underlinePaint, box);
        paint.overlinePaint = mended(paint.overlinePaint, box);
        paint.strikethroughPaint = mended(paint.strikethroughPaint, box);
      }
    }
  }

  @SuppressWarnings("NullAway") // Batik marks no nulls; a null paint draws nothing.
  private Paint mended(@Nullable Paint paint, @Nullable Rectangle2D box) {
    if (paint == null || paint instanceof Color || box == null) {
      return paint;
    }
    if (paint instanceof PatternPaint pattern) {
      mendRepeated(pattern.getGraphicsNode());
      return isFlat(pattern.getPatternTransform())
          ? flat("pattern")
          : new PatternMending(notes).mended(pattern, box);
    }
    if (paint instanceof MultipleGradientPaint g && isFlat(g.getTransform())) {
      return flat("gradient");
    }
    GradientMending gradients = new GradientMending(notes);
    if (paint instanceof LinearGradientPaint linear) {
      return gradients.mended(linear, box);
    }
    return paint instanceof RadialGradientPaint radial ? gradients.mended(radial, box) : paint;
  }

  private @Nullable Paint flat(String kind) {
    notes.add(
        PictureNote.changed(
            "a " + kind + " whose transform flattens it paints nothing; check the drawing"));
    return null;
  }

  /** The corners of a box under the inverse of a transform that has one. */
  static List<double[]> corners(Rectangle2D box, AffineTransform t) {
    List<double[]> all = new ArrayList<>();
    double d = t.getDeterminant();
    for (int i = 0; i < 4; i++) {
      double x = (i % 2 == 0 ? box.getMinX() : box.getMaxX()) - t.getTranslateX();
      double y = (i < 2 ? box.getMinY() : box.getMaxY()) - t.getTranslateY();
      all.add(
          new double[] {
            (x * t.getScaleY() - y * t.getShearX()) / d, (y * t.getScaleX() - x * t.getShearY()) / d
          });
    }
    return all;
  }
}
