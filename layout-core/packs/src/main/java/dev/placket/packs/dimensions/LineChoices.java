package dev.placket.packs.dimensions;

import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;

/**
 * The places where a line of measure may lie: on the drawing, and in the lanes outside.
 *
 * @param frame the flat on its sheet
 */
record LineChoices(DimensionFrame frame) {
  /** A line along one of the drawing stands so far beside it. */
  private static final Length BESIDE = Length.mm(2.5);

  /**
   * Places of an oblique line on either side of its spots: near, so that one sees what it measures.
   */
  private static final int BESIDES = 1;

  /** Those on the drawing first, then from the nearest lane outwards. */
  List<DrawnLine> of(MeasureLine its) {
    PlanePoint a = frame.place().apply(its.from());
    PlanePoint b = frame.place().apply(its.to());
    List<DrawnLine> all = new ArrayList<>();
    if (its.run() == DimensionRun.ALONG) {
      List<PlanePoint> way = its.way().stream().map(frame.place()).toList();
      Double beside = its.beside();
      if (beside != null) {
        return List.of(
            DrawnLine.of(its, a, b, Segments.offset(way, beside * frame.scale()), false));
      }
      for (double away : new double[] {BESIDE.pt(), -BESIDE.pt()}) {
        List<PlanePoint> line = Segments.offset(way, away);
        if (line.stream().allMatch(this::isOnFlat)) {
          all.add(DrawnLine.of(its, a, b, line, false));
        }
      }
      return all.isEmpty() ? List.of(DrawnLine.of(its, a, b, way, false)) : all;
    }
    Double beside = its.beside();
    double away = beside == null ? 0 : beside * frame.scale();
    all.add(DrawnLine.of(its, a, b, Segments.beside(its.run(), a, b, away), false));
    if (beside == null) {
      lanes(its, a, b, all);
    }
    return all;
  }

  private boolean isOnFlat(PlanePoint p) {
    Rect ink = frame.ink().grown(CodePlaces.OVER.pt());
    return p.x() >= ink.left()
        && p.x() <= ink.right()
        && p.y() >= ink.top()
        && p.y() <= ink.bottom();
  }

  private void lanes(MeasureLine its, PlanePoint a, PlanePoint b, List<DrawnLine> all) {
    Rect ink = frame.ink();
    Lanes lanes = frame.lanes();
    boolean straight = its.run() == DimensionRun.STRAIGHT;
    if (its.run() == DimensionRun.LEVEL || straight && its.from().y() == its.to().y()) {
      for (int lane = 1; lane <= Math.max(lanes.top(), lanes.bottom()); lane++) {
        double away = Lanes.away(lane);
        if (lane <= lanes.top()) {
          all.add(level(its, a, b, ink.top() - away));
        }
        if (lane <= lanes.bottom()) {
          all.add(level(its, a, b, ink.bottom() + away));
        }
      }
    } else if (its.run() == DimensionRun.UPRIGHT || its.from().x() == its.to().x()) {
      for (int lane = 1; lane <= Math.max(lanes.left(), lanes.right()); lane++) {
        double away = Lanes.away(lane);
        if (lane <= lanes.left()) {
          all.add(upright(its, a, b, ink.left() - away));
        }
        if (lane <= lanes.right()) {
          all.add(upright(its, a, b, ink.right() + away));
        }
      }
    } else {
      beside(its, a, b, all);
    }
  }

  /** An oblique line has no lanes; it may lie beside its spots, where that is within the ink. */
  private void beside(MeasureLine its, PlanePoint a, PlanePoint b, List<DrawnLine> all) {
    for (int lane = 1; lane <= BESIDES; lane++) {
      for (double away : new double[] {Lanes.away(lane), -Lanes.away(lane)}) {
        List<PlanePoint> line = Segments.beside(its.run(), a, b, away);
        if (line.stream().allMatch(this::isOnFlat)) {
          all.add(DrawnLine.of(its, a, b, line, true));
        }
      }
    }
  }

  private static DrawnLine level(MeasureLine its, PlanePoint a, PlanePoint b, double y) {
    List<PlanePoint> line = List.of(new PlanePoint(a.x(), y), new PlanePoint(b.x(), y));
    return DrawnLine.of(its, a, b, line, true);
  }

  private static DrawnLine upright(MeasureLine its, PlanePoint a, PlanePoint b, double x) {
    List<PlanePoint> line = List.of(new PlanePoint(x, a.y()), new PlanePoint(x, b.y()));
    return DrawnLine.of(its, a, b, line, true);
  }
}
