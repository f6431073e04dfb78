package dev.placket.packs.page;

import dev.placket.layout.callout.LeaderEnd;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import dev.placket.packs.callouts.LaidText;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;

/** What is drawn of a callout beside its text, in points on the sheet, y down. */
final class LeaderShapes {
  static final double LINE = Length.mm(LaidText.LINE_MM).pt();

  /** White round a dot, so that it is seen on dark cloth. */
  private static final double HALO = Length.mm(0.3).pt();

  private static final double ARROW = Length.mm(2.5).pt();

  /** Half of an arrowhead's width over its length: the tangent of half of 30 degrees. */
  private static final double SLANT = 2 - Math.sqrt(3);

  private static final double DOT = Length.mm(LaidText.DOT_MM).pt();

  private LeaderShapes() {}

  static BasicStroke stroke() {
    return new BasicStroke((float) LINE, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
  }

  /** The lines, the rings round regions, and that of the mark. */
  static Path2D lines(LaidText callout) {
    Path2D path = new Path2D.Double();
    for (List<PlanePoint> leader : callout.leaders()) {
      PlanePoint from = leader.get(0);
      path.moveTo(from.x(), from.y());
      leader.subList(1, leader.size()).forEach(p -> path.lineTo(p.x(), p.y()));
    }
    for (Rect region : callout.regions()) {
      path.append(
          new Ellipse2D.Double(region.left(), region.top(), region.width(), region.height()),
          false);
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

  /** What leaders have at their spots. */
  static Shape ends(LaidText callout) {
    Path2D path = new Path2D.Double();
    for (List<PlanePoint> leader : callout.leaders()) {
      switch (callout.end()) {
        case DOT -> path.append(circle(leader.get(0), DOT), false);
        case ARROW -> path.append(arrow(leader.get(0), leader.get(1), ARROW), false);
        default -> {}
      }
    }
    return path;
  }

  /** White round dots, and along leaders with arrowheads, so that they are seen on dark cloth. */
  static Shape halos(LaidText callout) {
    Path2D path = new Path2D.Double();
    for (List<PlanePoint> leader : callout.leaders()) {
      if (callout.end() == LeaderEnd.DOT) {
        path.append(circle(leader.get(0), DOT + 2 * HALO), false);
      } else if (callout.end() == LeaderEnd.ARROW) {
        double side = ARROW * SLANT;
        band(path, leader, LINE / 2 + HALO);
        band(path, List.of(leader.get(0), along(leader, ARROW + HALO)), side + HALO);
      }
    }
    return path;
  }

  /** How far along its first piece. */
  private static PlanePoint along(List<PlanePoint> leader, double size) {
    PlanePoint tip = leader.get(0);
    PlanePoint from = leader.get(1);
    double length = Math.hypot(from.x() - tip.x(), from.y() - tip.y());
    double share = length > 0 ? size / length : 0;
    return new PlanePoint(
        tip.x() + (from.x() - tip.x()) * share, tip.y() + (from.y() - tip.y()) * share);
  }

  /** A band along a line, all pieces one way round, so that none leaves a hole in another. */
  private static void band(Path2D path, List<PlanePoint> line, double half) {
    for (int i = 1; i < line.size(); i++) {
      PlanePoint a = line.get(i - 1);
      PlanePoint b = line.get(i);
      double length = Math.hypot(b.x() - a.x(), b.y() - a.y());
      if (length > 0) {
        double x = -(b.y() - a.y()) / length * half;
        double y = (b.x() - a.x()) / length * half;
        path.moveTo(a.x() - x, a.y() - y);
        path.lineTo(b.x() - x, b.y() - y);
        path.lineTo(b.x() + x, b.y() + y);
        path.lineTo(a.x() + x, a.y() + y);
        path.closePath();
      }
    }
  }

  /** A closed arrowhead of 30 degrees that comes from there. */
  static Path2D arrow(PlanePoint tip, PlanePoint from, double size) {
    double length = Math.hypot(from.x() - tip.x(), from.y() - tip.y());
    Path2D arrow = new Path2D.Double();
    if (length > 0) {
      double x = (from.x() - tip.x()) / length * size;
      double y = (from.y() - tip.y()) / length * size;
      arrow.moveTo(tip.x(), tip.y());
      arrow.lineTo(tip.x() + x - y * SLANT, tip.y() + y + x * SLANT);
      arrow.lineTo(tip.x() + x + y * SLANT, tip.y() + y - x * SLANT);
      arrow.closePath();
    }
    return arrow;
  }

  private static Ellipse2D circle(PlanePoint middle, double across) {
    return new Ellipse2D.Double(middle.x() - across / 2, middle.y() - across / 2, across, across);
  }
}
