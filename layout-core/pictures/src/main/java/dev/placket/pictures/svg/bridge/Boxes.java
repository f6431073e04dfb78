package dev.placket.pictures.svg.bridge;

import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import org.apache.batik.gvt.GraphicsNode;

/** Boxes that effects are measured by. */
final class Boxes {
  private Boxes() {}

  /** Whether effects in units of the box are passed over (SVG 2, 8.11): it has no area. */
  static boolean isFlat(GraphicsNode node) {
    // The node's own bounds are widened where they have no area.
    Shape outline = node.getOutline();
    Rectangle2D box = outline == null ? null : outline.getBounds2D();
    return box != null && (box.getWidth() == 0 || box.getHeight() == 0);
  }
}
