package dev.placket.pictures.svg.parse;

import dev.placket.pictures.base.ViewBox;
import java.awt.geom.AffineTransform;

/** How a viewBox is laid into a rectangle: the arithmetic of SVG 2, 8.2. */
public final class Viewport {
  private Viewport() {}

  /** Where along an axis a viewBox stands in room that it does not fill. */
  public enum Align {
    /** At the left or top. */
    MIN(0),
    /** In the middle. */
    MID(0.5),
    /** At the right or bottom. */
    MAX(1);

    private final double share;

    Align(double share) {
      this.share = share;
    }
  }

  /** Which of the two scales both axes take. */
  public enum Scaling {
    /** The smaller: all of the viewBox is seen. */
    MEET,
    /** The larger: all of the rectangle is filled. */
    SLICE,
    /** Each its own: the picture is stretched. */
    STRETCH
  }

  /**
   * The transform from drawing units to the rectangle's units.
   *
   * @param box what is shown
   * @param left the rectangle's left edge
   * @param top its top edge
   * @param width its width; above zero
   * @param height its height; above zero
   * @param alignX where it stands across
   * @param alignY where it stands down
   */
  public static AffineTransform fit(
      ViewBox box,
      double left,
      double top,
      double width,
      double height,
      Align alignX,
      Align alignY,
      Scaling scaling) {
    double sx = width / box.width();
    double sy = height / box.height();
    if (scaling == Scaling.MEET) {
      sx = sy = Math.min(sx, sy);
    } else if (scaling == Scaling.SLICE) {
      sx = sy = Math.max(sx, sy);
    }
    double tx = left - box.x() * sx + (width - box.width() * sx) * alignX.share;
    double ty = top - box.y() * sy + (height - box.height() * sy) * alignY.share;
    return new AffineTransform(sx, 0, 0, sy, tx, ty);
  }
}
