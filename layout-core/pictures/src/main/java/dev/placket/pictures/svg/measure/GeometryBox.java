package dev.placket.pictures.svg.measure;

import dev.placket.pictures.shape.PathBounds;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import org.apache.batik.bridge.TextNode;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.ShapeNode;
import org.jspecify.annotations.Nullable;

/**
 * The box of a part of a drawing by its geometry, without strokes: curves to their true extremes,
 * so that it is the same on every JDK.
 */
public final class GeometryBox {
  private @Nullable Rectangle2D box;

  private GeometryBox() {}

  /**
   * The box, or null of what draws nothing.
   *
   * @param at from the space of the node's content to drawing units
   */
  public static @Nullable Rectangle2D of(GraphicsNode node, AffineTransform at) {
    GeometryBox all = new GeometryBox();
    all.add(node, at);
    return all.box;
  }

  private void add(GraphicsNode node, AffineTransform at) {
    if (node instanceof CompositeGraphicsNode group) {
      for (Object child : group.getChildren()) {
        GraphicsNode its = (GraphicsNode) child;
        AffineTransform there = new AffineTransform(at);
        if (its.getTransform() != null) {
          there.concatenate(its.getTransform());
        }
        add(its, there);
      }
    } else if (node instanceof ShapeNode shape) {
      include(shape.getShape(), at);
    } else if (node instanceof TextNode text) {
      include(text.getOutline(), at);
    } else {
      include(node.getGeometryBounds(), at);
    }
  }

  private void include(@Nullable Shape shape, AffineTransform at) {
    Rectangle2D its = shape == null ? null : PathBounds.of(at.createTransformedShape(shape));
    if (its != null) {
      box = box == null ? its : box.createUnion(its);
    }
  }
}
