package dev.placket.packs.dimensions;

import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import dev.placket.packs.text.Lettering;
import dev.placket.packs.text.TextRun;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * Finds places for the codes of a flat's measures: clear of other measures, and of the drawing
 * where there is such a place.
 */
public final class DimensionLayout {
  private static final Length CAPITALS = Lettering.VALUE;

  /** White round a code. */
  private static final Length AIR = Length.mm(0.7);

  /** Between a short line and the code beside it. */
  private static final Length ASIDE = Length.mm(0.8);

  /** An extension line begins so far from its spot, and ends so far beyond the line. */
  private static final Length EXTENSION = Length.mm(1);

  /** A code may stand so far beyond the ink, which captions and other flats keep clear of. */
  private static final Length OVER = Length.mm(1);

  /** Where on a line its code may stand, the best place first. */
  private static final double[] PLACES = {
    0.5, 0.45, 0.55, 0.4, 0.6, 0.35, 0.65, 0.3, 0.7, 0.25, 0.75, 0.2, 0.8, 0.15, 0.85
  };

  /** A place is clear where the drawing covers less of it, and busy where it covers more. */
  private static final double CLEAR = 0.015;

  private static final double BUSY = 0.08;

  /** Places tried before the search gives up. */
  private static final int STEPS = 100_000;

  private final Lettering lettering;
  private final List<List<PlanePoint>> others;
  private final Rect room;
  private final ToDoubleFunction<Rect> dark;
  private final List<Drawn> all = new ArrayList<>();
  private final List<LaidDimension> laid = new ArrayList<>();
  private int steps;
  private int deepest;

  /** A line with its extension lines, before its code is placed. */
  private record Drawn(
      MeasureLine its, PlanePoint from, PlanePoint to, List<List<PlanePoint>> more) {
    double length() {
      return Math.sqrt(square(to.x() - from.x()) + square(to.y() - from.y()));
    }

    PlanePoint at(double share) {
      return new PlanePoint(
          from.x() + share * (to.x() - from.x()), from.y() + share * (to.y() - from.y()));
    }

    List<List<PlanePoint>> lines() {
      List<List<PlanePoint>> lines = new ArrayList<>(more);
      lines.add(List.of(from, to));
      return lines;
    }
  }

  private DimensionLayout(
      Rect ink, ToDoubleFunction<Rect> dark, List<List<PlanePoint>> others, Lettering lettering) {
    this.others = others;
    this.dark = dark;
    double over = OVER.pt();
    this.room =
        new Rect(ink.left() - over, ink.top() - over, ink.right() + over, ink.bottom() + over);
    this.lettering = lettering;
  }

  /**
   * What was found.
   *
   * @param dimensions in the order that they were given in
   * @param stuck the code for which no place was found; empty if all have one
   */
  public record Result(List<LaidDimension> dimensions, String stuck) {
    /** Copies the list. */
    public Result {
      dimensions = List.copyOf(dimensions);
    }
  }

  /**
   * The measures of a flat. Codes stand where no other measure's line or code meets them.
   *
   * @param spot where a point of the flat lies on the sheet
   * @param ink where its ink lies on the sheet
   * @param dark what share of a box on the sheet the drawing covers
   * @param others lines of callouts on the flat, which codes keep clear of
   * @param scale points to the drawing unit
   */
  public static Result lay(
      List<MeasureLine> dimensions,
      Function<String, PlanePoint> spot,
      Rect ink,
      ToDoubleFunction<Rect> dark,
      List<List<PlanePoint>> others,
      double scale,
      Lettering lettering) {
    DimensionLayout layout = new DimensionLayout(ink, dark, others, lettering);
    for (MeasureLine each : dimensions) {
      PlanePoint a = spot.apply(each.from());
      PlanePoint b = spot.apply(each.to());
      PlanePoint[] ends = each.ends(a, b, each.beside() * scale);
      List<List<PlanePoint>> more = new ArrayList<>();
      extension(a, ends[0], more);
      extension(b, ends[1], more);
      layout.all.add(new Drawn(each, ends[0], ends[1], more));
    }
    boolean placed = layout.place(0);
    String stuck = placed ? "" : layout.all.get(layout.deepest).its.code();
    return new Result(placed ? layout.laid : List.of(), stuck);
  }

  private static void extension(PlanePoint spot, PlanePoint end, List<List<PlanePoint>> more) {
    double x = end.x() - spot.x();
    double y = end.y() - spot.y();
    double length = Math.sqrt(x * x + y * y);
    if (length > 2 * EXTENSION.pt()) {
      double gap = EXTENSION.pt() / length;
      more.add(
          List.of(
              new PlanePoint(spot.x() + gap * x, spot.y() + gap * y),
              new PlanePoint(end.x() + gap * x, end.y() + gap * y)));
    }
  }

  private boolean place(int next) {
    deepest = Math.max(deepest, Math.min(next, all.size() - 1));
    if (next == all.size()) {
      return true;
    }
    for (LaidDimension each : candidates(all.get(next))) {
      if (++steps > STEPS) {
        return false;
      }
      if (isClear(each.box(), next)) {
        laid.add(each);
        if (place(next + 1)) {
          return true;
        }
        laid.remove(laid.size() - 1);
      }
    }
    return false;
  }

  private boolean isClear(Rect box, int own) {
    if (box.left() < room.left()
        || box.top() < room.top()
        || box.right() > room.right()
        || box.bottom() > room.bottom()) {
      return false;
    }
    for (int i = 0; i < all.size(); i++) {
      for (List<PlanePoint> line : i == own ? all.get(i).more : all.get(i).lines()) {
        if (meets(line.get(0), line.get(1), box)) {
          return false;
        }
      }
    }
    for (List<PlanePoint> line : others) {
      for (int i = 1; i < line.size(); i++) {
        if (meets(line.get(i - 1), line.get(i), box)) {
          return false;
        }
      }
    }
    return laid.stream().noneMatch(l -> overlap(l.box(), box));
  }

  private static boolean overlap(Rect a, Rect b) {
    return a.left() < b.right()
        && b.left() < a.right()
        && a.top() < b.bottom()
        && b.top() < a.bottom();
  }

  /** Whether a segment comes into a box: the box lies on both sides of it, and beside it. */
  private static boolean meets(PlanePoint a, PlanePoint b, Rect box) {
    if (Math.max(a.x(), b.x()) <= box.left()
        || Math.min(a.x(), b.x()) >= box.right()
        || Math.max(a.y(), b.y()) <= box.top()
        || Math.min(a.y(), b.y()) >= box.bottom()) {
      return false;
    }
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (double x : new double[] {box.left(), box.right()}) {
      for (double y : new double[] {box.top(), box.bottom()}) {
        double side = (b.x() - a.x()) * (y - a.y()) - (b.y() - a.y()) * (x - a.x());
        least = Math.min(least, side);
        most = Math.max(most, side);
      }
    }
    return least < 0 && most > 0;
  }

  private List<LaidDimension> candidates(Drawn line) {
    List<LaidDimension> found = new ArrayList<>();
    double wide = lettering.width(line.its.code(), CAPITALS) + 2 * AIR.pt();
    double high = CAPITALS.pt() + 2 * AIR.pt();
    double x = Math.abs(line.to.x() - line.from.x());
    double y = Math.abs(line.to.y() - line.from.y());
    double length = line.length();
    // What of the line the box takes: it leaves at the side that the line meets first.
    double gap = length == 0 ? 0 : length * Math.min(x == 0 ? 1 : wide / x, y == 0 ? 1 : high / y);
    double arrows = 2 * Length.mm(LaidDimension.ARROW_MM + 1).pt();
    for (double share : PLACES) {
      boolean room = Math.min(share, 1 - share) * length >= (gap + arrows) / 2;
      if (room) {
        PlanePoint at = line.at(share);
        found.add(laid(line, box(at.x(), at.y(), wide, high), share, gap / length));
      }
    }
    for (double share : PLACES) {
      PlanePoint at = line.at(share);
      double away = ASIDE.pt();
      // Beside the line, on the side where it reads first: above a level one, right of others.
      double sine = length == 0 ? 0 : y / length;
      double cosine = length == 0 ? 1 : x / length;
      double off = wide / 2 * sine + high / 2 * cosine + away;
      double nx = off * sine;
      double ny = off * cosine;
      boolean falling = (line.to.x() - line.from.x()) * (line.to.y() - line.from.y()) > 0;
      double right = falling || x == 0 ? nx : -nx;
      found.add(laid(line, box(at.x() + right, at.y() - ny, wide, high), share, 0));
      found.add(laid(line, box(at.x() - right, at.y() + ny, wide, high), share, 0));
    }
    // Where lines of the drawing run under a code, white hides them: the clear places come first.
    found.sort(Comparator.comparingInt(each -> busy(each.box())));
    return found;
  }

  private int busy(Rect box) {
    double share = dark.applyAsDouble(box);
    return share < CLEAR ? 0 : share < BUSY ? 1 : 2;
  }

  private static Rect box(double x, double y, double wide, double high) {
    return new Rect(x - wide / 2, y - high / 2, x + wide / 2, y + high / 2);
  }

  private LaidDimension laid(Drawn line, Rect box, double share, double gap) {
    List<List<PlanePoint>> strokes = new ArrayList<>(line.more);
    if (gap > 0) {
      strokes.add(List.of(line.from, line.at(share - gap / 2)));
      strokes.add(List.of(line.at(share + gap / 2), line.to));
    } else {
      strokes.add(List.of(line.from, line.to));
    }
    List<TextRun> runs =
        lettering.line(
            line.its.code(), box.left() + AIR.pt(), box.bottom() - AIR.pt(), CAPITALS, false);
    return new LaidDimension(line.its.code(), line.from, line.to, strokes, box, runs);
  }

  private static double square(double x) {
    return x * x;
  }
}
