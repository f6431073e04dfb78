package dev.placket.pictures.svg.measure;

import dev.placket.pictures.shape.InkBoxes;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.util.function.Consumer;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.CompositeShapePainter;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.ShapeNode;
import org.apache.batik.gvt.ShapePainter;
import org.apache.batik.gvt.StrokeShapePainter;
import org.jspecify.annotations.Nullable;

/** Walks over the strokes of a drawing; tiles of patterns and lettering are none. */
public final class Strokes {
  private final Consumer<Pen> each;

  private Strokes(Consumer<Pen> each) {
    this.each = each;
  }

  /**
   * A stroke that leaves ink, white or other.
   *
   * @param painter what draws it
   * @param stroke its width, dashes, joins and caps
   * @param shape the path
   * @param at from the path's own space to drawing units
   */
  public record Pen(
      StrokeShapePainter painter, BasicStroke stroke, Shape shape, AffineTransform at) {}

  /** Takes each stroke in the order of drawing. */
  public static void each(GraphicsNode node, AffineTransform toUnits, Consumer<Pen> each) {
    new Strokes(each).add(node, toUnits);
  }

  private void add(GraphicsNode node, AffineTransform parent) {
    if (!node.isVisible() && !(node instanceof CompositeGraphicsNode)) {
      return;
    }
    AffineTransform at = new AffineTransform(parent);
    if (node.getTransform() != null) {
      at.concatenate(node.getTransform());
    }
    if (node instanceof CompositeGraphicsNode group) {
      for (Object child : group.getChildren()) {
        add((GraphicsNode) child, at);
      }
    } else if (node instanceof ShapeNode shape) {
      add(shape.getShapePainter(), at);
    }
  }

  private void add(@Nullable ShapePainter painter, AffineTransform at) {
    if (painter instanceof CompositeShapePainter several) {
      for (int i = 0; i < several.getShapePainterCount(); i++) {
        add(several.getShapePainter(i), at);
      }
    } else if (painter instanceof StrokeShapePainter stroke
        && stroke.getStroke() instanceof BasicStroke pen
        && InkBoxes.kind(stroke.getPaint()) != null) {
      each.accept(new Pen(stroke, pen, stroke.getShape(), at));
    }
  }
}
