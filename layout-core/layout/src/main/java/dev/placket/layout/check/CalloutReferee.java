package dev.placket.layout.check;

import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;

/**
 * Judges the callouts of a sheet by their drawn points and boxes, and calls nothing that lays them.
 *
 * <p>The names in {@link Breach#rule()}: {@code leader starts} at its spot, {@code leader ends} at
 * its label, {@code leader crosses} another leader, {@code leader through} a label or a ring,
 * {@code label over} ink or another label, {@code callout outside} of its flat's footprint, {@code
 * ring outside} of the ink. Footprints keep clear of one another and of labelled cells by the rules
 * of {@link Referee}.
 */
public final class CalloutReferee {
  /** What the rounding of coordinates may come to, in points. */
  private static final double SLACK = 1e-6;

  /** The most by which a leader may end before its label: 1 mm. */
  private static final double BEFORE = 72 / 25.4;

  /** A leader that starts this near to a ring starts at it, in points. */
  private static final double NEAR = 0.5;

  private CalloutReferee() {}

  /** The rules that callouts break, empty if they keep them all. O(n²) for n callouts. */
  public static List<Breach> check(List<CheckedCallout> callouts) {
    List<Breach> breaches = new ArrayList<>();
    for (int i = 0; i < callouts.size(); i++) {
      CheckedCallout c = callouts.get(i);
      alone(c, breaches);
      for (int j = 0; j < callouts.size(); j++) {
        if (j != i) {
          together(c, callouts.get(j), j < i, breaches);
        }
      }
    }
    return breaches;
  }

  private static void alone(CheckedCallout c, List<Breach> breaches) {
    PlanePoint first = c.leader().get(0);
    PlanePoint last = c.leader().get(c.leader().size() - 1);
    if (Math.abs(away(first, c.spot()) - c.ring()) > SLACK) {
      add(breaches, "leader starts", c, "away from its spot");
    }
    if (toBox(last, c.label()) > BEFORE + SLACK) {
      add(breaches, "leader ends", c, "away from its label");
    }
    if (overlap(c.label(), c.ink())) {
      add(breaches, "label over", c, "over the drawing");
    }
    Rect ring =
        new Rect(
            c.spot().x() - c.ring(),
            c.spot().y() - c.ring(),
            c.spot().x() + c.ring(),
            c.spot().y() + c.ring());
    if (c.ring() > 0 && !inside(grown(c.ink()), ring)) {
      add(breaches, "ring outside", c, "ringed beyond the drawing");
    }
    Rect room = grown(c.room());
    boolean inside = inside(room, c.label());
    for (PlanePoint p : c.leader()) {
      inside &= toBox(p, room) == 0;
    }
    if (!inside) {
      add(breaches, "callout outside", c, "outside of the footprint of " + c.flat());
    }
  }

  private static void together(
      CheckedCallout c, CheckedCallout other, boolean first, List<Breach> breaches) {
    if (c.flat().equals(other.flat()) && c.id().equals(other.id())) {
      return;
    }
    boolean oneSpot =
        c.flat().equals(other.flat()) && away(c.leader().get(0), other.leader().get(0)) <= SLACK;
    if (first && !oneSpot && cross(c.leader(), other.leader())) {
      add(breaches, "leader crosses", c, "crosses that of " + other.id());
    }
    if (first && overlap(c.label(), other.label())) {
      add(breaches, "label over", c, "over the label of " + other.id());
    }
    if (intoRing(c.leader(), other)) {
      add(breaches, "leader through", c, "through the ring of " + other.id());
    }
    if (through(c.leader(), other.label())) {
      add(breaches, "leader through", c, "through the label of " + other.id());
    }
  }

  private static void add(List<Breach> all, String rule, CheckedCallout c, String found) {
    all.add(new Breach(rule, "callout " + c.id() + " is " + found));
  }

  private static double away(PlanePoint a, PlanePoint b) {
    return Math.hypot(a.x() - b.x(), a.y() - b.y());
  }

  private static double toBox(PlanePoint p, Rect b) {
    double x = Math.max(0, Math.max(b.left() - p.x(), p.x() - b.right()));
    double y = Math.max(0, Math.max(b.top() - p.y(), p.y() - b.bottom()));
    return Math.hypot(x, y);
  }

  private static boolean overlap(Rect a, Rect b) {
    return a.left() < b.right() - SLACK
        && b.left() < a.right() - SLACK
        && a.top() < b.bottom() - SLACK
        && b.top() < a.bottom() - SLACK;
  }

  private static Rect grown(Rect b) {
    return new Rect(b.left() - SLACK, b.top() - SLACK, b.right() + SLACK, b.bottom() + SLACK);
  }

  private static boolean inside(Rect room, Rect box) {
    return box.left() >= room.left()
        && box.top() >= room.top()
        && box.right() <= room.right()
        && box.bottom() <= room.bottom();
  }

  private static boolean cross(List<PlanePoint> a, List<PlanePoint> b) {
    for (int i = 1; i < a.size(); i++) {
      for (int j = 1; j < b.size(); j++) {
        if (cross(a.get(i - 1), a.get(i), b.get(j - 1), b.get(j))) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether two segments share a point, by the signs of areas (orientation test). */
  private static boolean cross(PlanePoint a, PlanePoint b, PlanePoint c, PlanePoint d) {
    double ofC = area(a, b, c);
    double ofD = area(a, b, d);
    double ofA = area(c, d, a);
    double ofB = area(c, d, b);
    if (ofC * ofD < 0 && ofA * ofB < 0) {
      return true;
    }
    return ofC == 0 && within(a, b, c)
        || ofD == 0 && within(a, b, d)
        || ofA == 0 && within(c, d, a)
        || ofB == 0 && within(c, d, b);
  }

  private static double area(PlanePoint a, PlanePoint b, PlanePoint c) {
    return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
  }

  private static boolean within(PlanePoint a, PlanePoint b, PlanePoint p) {
    return p.x() >= Math.min(a.x(), b.x())
        && p.x() <= Math.max(a.x(), b.x())
        && p.y() >= Math.min(a.y(), b.y())
        && p.y() <= Math.max(a.y(), b.y());
  }

  /** Whether a line that starts outside of a ring comes into it. */
  private static boolean intoRing(List<PlanePoint> line, CheckedCallout ringed) {
    double radius = ringed.ring();
    PlanePoint middle = ringed.spot();
    if (radius == 0 || away(line.get(0), middle) <= radius + NEAR) {
      return false;
    }
    for (int i = 1; i < line.size(); i++) {
      PlanePoint a = line.get(i - 1);
      PlanePoint b = line.get(i);
      double x = b.x() - a.x();
      double y = b.y() - a.y();
      // Where |a + t (b - a) - middle| equals the radius: a quadratic equation in t.
      double fromX = a.x() - middle.x();
      double fromY = a.y() - middle.y();
      double half = fromX * x + fromY * y;
      double square = x * x + y * y;
      double root = half * half - square * (fromX * fromX + fromY * fromY - radius * radius);
      if (root > 0 && -half + Math.sqrt(root) > 0 && -half - Math.sqrt(root) < square) {
        return true;
      }
    }
    return false;
  }

  /** Whether a line comes into a box: by clipping each segment to it (Liang and Barsky). */
  private static boolean through(List<PlanePoint> line, Rect box) {
    for (int i = 1; i < line.size(); i++) {
      PlanePoint a = line.get(i - 1);
      PlanePoint b = line.get(i);
      double[] range = {0, 1};
      boolean in =
          clip(a.x() - b.x(), a.x() - box.left() - SLACK, range)
              && clip(b.x() - a.x(), box.right() - SLACK - a.x(), range)
              && clip(a.y() - b.y(), a.y() - box.top() - SLACK, range)
              && clip(b.y() - a.y(), box.bottom() - SLACK - a.y(), range);
      if (in && range[0] < range[1]) {
        return true;
      }
    }
    return false;
  }

  /** Narrows the range in which {@code p t <= q}; false if nothing is left. */
  private static boolean clip(double p, double q, double[] range) {
    if (p == 0) {
      return q >= 0;
    }
    double t = q / p;
    if (p < 0) {
      range[0] = Math.max(range[0], t);
    } else {
      range[1] = Math.min(range[1], t);
    }
    return range[0] <= range[1];
  }
}
