package dev.placket.packs.page;

import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import dev.placket.packs.callouts.LaidText;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;

/** What is drawn of a callout beside its text, in points on the sheet, y down. */
final class LeaderShapes {
  static final double LINE = Length.mm(LaidText.LINE_MM).pt();

  /** White round a dot, so that it is seen on dark cloth. */
  private static final double HALO = Length.mm(0.3).pt();

  private static final double DOT = Length.mm(LaidText.DOT_MM).pt();

  private LeaderShapes() {}

  static BasicStroke stroke() {
    return new BasicStroke((float) LINE, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
  }

  /** The line, and the ring if there is one. */
  static Path2D lines(LaidText callout) {
    Path2D path = new Path2D.Double();
    PlanePoint from = callout.leader().get(0);
    path.moveTo(from.x(), from.y());
    for (PlanePoint p : callout.leader().subList(1, callout.leader().size())) {
      path.lineTo(p.x(), p.y());
    }
    Rect ring = callout.ring();
    if (ring != null) {
      double high = ring.height() - LINE;
      path.append(
          new RoundRectangle2D.Double(
              ring.left() + LINE / 2, ring.top() + LINE / 2, ring.width() - LINE, high, high, high),
          false);
    }
    return path;
  }

  static Shape dot(LaidText callout) {
    return circle(callout.leader().get(0), DOT);
  }

  static Shape halo(LaidText callout) {
    return circle(callout.leader().get(0), DOT + 2 * HALO);
  }

  private static Ellipse2D circle(PlanePoint middle, double across) {
    return new Ellipse2D.Double(middle.x() - across / 2, middle.y() - across / 2, across, across);
  }
}
