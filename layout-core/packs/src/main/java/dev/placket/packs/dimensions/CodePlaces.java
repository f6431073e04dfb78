package dev.placket.packs.dimensions;

import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import dev.placket.packs.text.Lettering;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The places where the code of a line may stand: in a gap of it, beside it, or beyond its ends.
 *
 * @param frame the flat on its sheet
 * @param lettering for the codes
 */
record CodePlaces(DimensionFrame frame, Lettering lettering) {
  private static final Length CAPITALS = Lettering.VALUE;

  /** White round a code. */
  private static final Length AIR = Length.mm(0.7);

  /** Between a short line and the code beside it. */
  private static final Length ASIDE = Length.mm(0.8);

  /** A code may stand so far beyond the ink, which captions and other flats keep clear of. */
  static final Length OVER = Length.mm(1.5);

  /** Where on a line its code may stand, the best place first. */
  private static final double[] PLACES = {
    0.5, 0.45, 0.55, 0.4, 0.6, 0.35, 0.65, 0.3, 0.7, 0.25, 0.75, 0.2, 0.8, 0.15, 0.85
  };

  /** A place is clear where the drawing covers less of it, and busy where it covers more. */
  private static final double CLEAR = 0.015;

  private static final double BUSY = 0.08;

  /**
   * A code at one place.
   *
   * @param laid the line with it
   * @param busy 0 where it stands clear of the drawing, more where it covers some
   */
  record Place(LaidDimension laid, int busy) {}

  /** All places of a line that lie near the flat, those clear of the drawing first. */
  List<Place> of(DrawnLine line) {
    double wide = lettering.width(line.its().code(), CAPITALS) + 2 * AIR.pt();
    double high = CAPITALS.pt() + 2 * AIR.pt();
    List<Place> found = new ArrayList<>();
    double length = line.length();
    double arrow = Length.mm(LaidDimension.ARROW_MM + 1).pt();
    for (double share : PLACES) {
      PlanePoint at = Segments.at(line.line(), share * length)[0];
      Rect box = box(at.x(), at.y(), wide, high);
      double half = within(line.line(), box) / 2;
      if (Math.min(share, 1 - share) * length >= half + arrow) {
        add(line, box, true, found);
      }
    }
    for (double share : PLACES) {
      beside(line, share, wide, high, found);
    }
    beyond(line, wide, high, found);
    // Where lines of the drawing run under a code, white hides them: the clear places come first.
    found.sort(Comparator.comparingInt(Place::busy));
    return found;
  }

  /** Beside the line, on the side where it reads first: above a level one, right of others. */
  private void beside(DrawnLine line, double share, double wide, double high, List<Place> found) {
    PlanePoint[] at = Segments.at(line.line(), share * line.length());
    PlanePoint way = at[1];
    double sine = Math.abs(way.y());
    double cosine = Math.abs(way.x());
    double off = wide / 2 * sine + high / 2 * cosine + ASIDE.pt();
    boolean falling = way.x() * way.y() > 0;
    double right = falling || way.x() == 0 ? off * sine : -off * sine;
    double down = off * cosine;
    double x = at[0].x();
    double y = at[0].y();
    add(line, box(x + right, y - down, wide, high), false, found);
    add(line, box(x - right, y + down, wide, high), false, found);
  }

  private void beyond(DrawnLine line, double wide, double high, List<Place> found) {
    for (double share : new double[] {1, 0}) {
      PlanePoint[] at = Segments.at(line.line(), share * line.length());
      double way = share == 1 ? 1 : -1;
      double x = way * at[1].x();
      double y = way * at[1].y();
      double off =
          Math.min(
                  x == 0 ? Double.POSITIVE_INFINITY : wide / 2 / Math.abs(x),
                  y == 0 ? Double.POSITIVE_INFINITY : high / 2 / Math.abs(y))
              + ASIDE.pt();
      add(line, box(at[0].x() + off * x, at[0].y() + off * y, wide, high), false, found);
    }
  }

  private void add(DrawnLine line, Rect box, boolean gap, List<Place> found) {
    if (room().contains(box) && (gap || within(line.line(), box) == 0)) {
      found.add(new Place(laid(line, box, gap), busy(frame, box)));
    }
  }

  /** 0 where a box is clear of the drawing, more where it covers some. */
  static int busy(DimensionFrame frame, Rect box) {
    double share = frame.dark().applyAsDouble(box);
    return share < CLEAR ? 0 : share < BUSY ? 1 : 2;
  }

  private Rect room() {
    Rect ink = frame.ink();
    Lanes lanes = frame.lanes();
    return new Rect(
        ink.left() - reach(lanes.left()),
        ink.top() - reach(lanes.top()),
        ink.right() + reach(lanes.right()),
        ink.bottom() + reach(lanes.bottom()));
  }

  private static double reach(int lanes) {
    return Math.max(OVER.pt(), Lanes.depth(lanes).pt());
  }

  private static Rect box(double x, double y, double wide, double high) {
    return new Rect(x - wide / 2, y - high / 2, x + wide / 2, y + high / 2);
  }

  /** How much of a line lies in a box. */
  private static double within(List<PlanePoint> line, Rect box) {
    double sum = 0;
    for (int i = 1; i < line.size(); i++) {
      double[] shares = Segments.inside(line.get(i - 1), line.get(i), box);
      if (shares.length > 0) {
        sum += (shares[1] - shares[0]) * Segments.length(line.get(i - 1), line.get(i));
      }
    }
    return sum;
  }

  private LaidDimension laid(DrawnLine line, Rect box, boolean gap) {
    List<List<PlanePoint>> strokes = new ArrayList<>(line.more());
    if (gap) {
      strokes.addAll(outside(line.line(), box));
    } else {
      strokes.add(line.line());
    }
    String code = line.its().code();
    return new LaidDimension(
        code,
        line.line(),
        strokes,
        box,
        lettering.line(code, box.left() + AIR.pt(), box.bottom() - AIR.pt(), CAPITALS, false),
        line.outside());
  }

  /** The parts of a line outside of a box. */
  private static List<List<PlanePoint>> outside(List<PlanePoint> line, Rect box) {
    List<List<PlanePoint>> parts = new ArrayList<>();
    List<PlanePoint> part = new ArrayList<>(List.of(line.get(0)));
    for (int i = 1; i < line.size(); i++) {
      PlanePoint a = line.get(i - 1);
      PlanePoint b = line.get(i);
      double[] shares = Segments.inside(a, b, box);
      if (shares.length == 0) {
        part.add(b);
        continue;
      }
      if (shares[0] > 0) {
        part.add(Segments.between(a, b, shares[0]));
      }
      if (part.size() > 1) {
        parts.add(part);
      }
      part = new ArrayList<>();
      part.add(Segments.between(a, b, shares[1]));
      if (shares[1] < 1) {
        part.add(b);
      }
    }
    if (part.size() > 1) {
      parts.add(part);
    }
    return parts;
  }
}
