package dev.placket.pictures.svg.measure;

import dev.placket.pictures.path.DrawnPath;
import dev.placket.pictures.path.PathPieces;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.ShapeNode;
import org.jspecify.annotations.Nullable;

/** Finds the path of an element, or of a group with one path in it. */
public final class OnePath {
  private OnePath() {}

  /**
   * The path in drawing units; null where there is none, or more than one.
   *
   * @param toUnits from the space of the root to drawing units
   */
  public static @Nullable DrawnPath of(GraphicsNode node, AffineTransform toUnits) {
    List<ShapeNode> shapes = new ArrayList<>();
    collect(node, shapes);
    if (shapes.size() != 1) {
      return null;
    }
    ShapeNode shape = shapes.get(0);
    AffineTransform at = new AffineTransform(toUnits);
    at.concatenate(shape.getGlobalTransform());
    return shape.getShape() == null ? null : PathPieces.of(shape.getShape(), at);
  }

  private static void collect(GraphicsNode node, List<ShapeNode> shapes) {
    if (shapes.size() > 1) {
      return;
    }
    if (node instanceof CompositeGraphicsNode group) {
      for (Object child : group.getChildren()) {
        collect((GraphicsNode) child, shapes);
      }
    } else if (node instanceof ShapeNode shape) {
      shapes.add(shape);
    }
  }
}
