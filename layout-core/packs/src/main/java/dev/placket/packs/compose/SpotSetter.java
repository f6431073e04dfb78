package dev.placket.packs.compose;

import dev.placket.layout.callout.LeaderEnd;
import dev.placket.layout.callout.LeaderStyle;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import dev.placket.packs.callouts.CalloutPlan;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackCallout;
import dev.placket.packs.description.PackLeaders;
import dev.placket.packs.description.PackPoint;
import dev.placket.packs.description.Words;
import dev.placket.packs.dimensions.DimensionPlan;
import dev.placket.packs.dimensions.InkMap;
import dev.placket.packs.dimensions.MeasureLine;
import dev.placket.packs.flats.FlatSpots;
import dev.placket.packs.language.StockPhrase;
import dev.placket.packs.text.Lettering;
import dev.placket.pictures.Drawing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** Finds the spots of a flat that are pointed at; slips are noted. */
final class SpotSetter {
  private final Described described;
  private final DetailCodes codes;
  private final SpotChecks spots;

  SpotSetter(Described described, DetailCodes codes) {
    this.described = described;
    this.codes = codes;
    this.spots = new SpotChecks(described);
  }

  SpotChecks checks() {
    return spots;
  }

  /** The elements of the drawing and, before them, the points that the description names. */
  Map<String, PlanePoint> points(FlatSetter.Read read) {
    Map<String, PlanePoint> drawn =
        read.picture() instanceof Drawing drawing ? drawing.points() : Map.of();
    Map<String, PlanePoint> all = new TreeMap<>(drawn);
    read.flat()
        .spots()
        .points()
        .forEach(
            (id, point) -> {
              String path = read.path() + "/points/" + id;
              InkedBox ink = read.ink();
              PlanePoint at = at(point, drawn, ink, path);
              if (at != null && spots.inside(at, ink, path)) {
                all.put(id, at);
              }
            });
    return all;
  }

  private @Nullable PlanePoint at(
      PackPoint point, Map<String, PlanePoint> drawn, InkedBox ink, String path) {
    PlanePoint share = point.share();
    if (share != null) {
      return new PlanePoint(
          ink.left() + share.x() * ink.width(), ink.top() + share.y() * ink.height());
    }
    String element = point.element();
    if (element == null) {
      return point.at();
    }
    PlanePoint found = drawn.get(element);
    if (found == null && drawn.isEmpty()) {
      add(path, "an element of a picture of pixels", "x and y in its pixels");
    } else if (found == null) {
      described
          .faults()
          .unknown(
              described.places().of(path + "/element"),
              "no part of the drawing named",
              element,
              drawn.keySet());
    }
    PlanePoint by = point.at();
    return found == null || by == null
        ? found
        : new PlanePoint(found.x() + by.x(), found.y() + by.y());
  }

  /** The spots as the sheet carries them. */
  FlatSpots of(
      FlatSetter.Read read, Flat flat, PackLeaders leaders, PackText text, Lettering lettering) {
    Map<String, PlanePoint> points = flat.points();
    List<FlatSpots.Callout> callouts = new ArrayList<>();
    List<CalloutPlan.Said> toDraw = new ArrayList<>();
    read.flat()
        .spots()
        .callouts()
        .forEach(
            (id, callout) -> {
              String path = read.path() + "/callouts/" + id;
              callout.points().forEach(point -> spots.isKnown(point, points, path + "/point"));
              Words own = callout.text();
              String said = text.beside(own == null ? Words.NONE : own, path + "/text");
              callouts.add(new FlatSpots.Callout(id, callout.points(), said));
              String lines = lines(callout, path, text);
              String fault = lettering.fault(lines + "\n" + callout.mark());
              if (fault != null) {
                add(path, fault, "letters that one of the fonts has");
              } else if (isSeen(callout, flat, path)) {
                toDraw.add(said(id, callout, lines));
              }
            });
    if (callouts.size() > CalloutPlan.MOST) {
      add(
          read.path() + "/callouts",
          callouts.size() + " callouts of one flat",
          "at most " + CalloutPlan.MOST);
      toDraw.clear();
    }
    List<String> named = new ArrayList<>(read.flat().spots().points().keySet());
    CalloutPlan plan = plan(flat, toDraw, leaders, lettering);
    List<MeasureLine> lines = new DimensionSetter(described).of(read, flat);
    ToDoubleFunction<Rect> dark =
        lines.isEmpty() ? box -> 0 : InkMap.of(read.picture(), flat.ink());
    DimensionPlan measures = DimensionPlan.of(flat, lines, plan == null, dark, lettering);
    return new FlatSpots(named, callouts, plan, measures);
  }

  /** Whether its spots lie in what is drawn: a part of the drawing may lie outside of the view. */
  private boolean isSeen(PackCallout callout, Flat flat, String path) {
    for (String point : callout.points()) {
      PlanePoint spot = flat.points().get(point);
      if (spot == null || !spots.inside(spot, flat.ink(), path + "/point")) {
        return false;
      }
      if (callout.region() != null && !ringInside(spot, callout.region(), flat.ink(), path)) {
        return false;
      }
    }
    return !callout.points().isEmpty();
  }

  private boolean ringInside(PlanePoint spot, double radius, InkedBox ink, String path) {
    double most =
        Math.min(
            Math.min(spot.x() - ink.left(), ink.right() - spot.x()),
            Math.min(spot.y() - ink.top(), ink.bottom() - spot.y()));
    if (radius > most) {
      add(
          path + "/region",
          String.format(
              java.util.Locale.ROOT,
              "a ring with a radius of %.4g, which reaches beyond the drawing",
              radius),
          String.format(java.util.Locale.ROOT, "at most %.4g around this point", most));
    }
    return radius <= most;
  }

  private static CalloutPlan.Said said(String id, PackCallout callout, String lines) {
    Double region = callout.region();
    LeaderEnd end = callout.end();
    LeaderEnd usual = region == null ? LeaderEnd.DOT : LeaderEnd.NONE;
    return new CalloutPlan.Said(
        id,
        callout.points(),
        callout.mark(),
        lines,
        region == null ? 0 : region,
        end == null ? usual : end);
  }

  /** Its own text, or the name of the detail that it is about; then the sheet of that detail. */
  private String lines(PackCallout callout, String path, PackText text) {
    Words stated = callout.text();
    String own = stated == null ? "" : text.setLines(stated, path + "/text");
    DetailCodes.Place there = codes.places().get(callout.detail());
    if (there == null || stated != null && stated.blank()) {
      return own;
    }
    Words caption = there.flat().caption();
    String name =
        own.isBlank() && caption != null ? text.setLines(caption, there.path() + "/caption") : own;
    if (path.startsWith("sheets/" + there.sheet() + "/")) {
      return name;
    }
    Integer number = there.number();
    String sheet =
        number == null
            ? text.setBeside(
                Objects.requireNonNull(described.pack().sheets().get(there.sheet())).name(), path)
            : text.phrases().beside(StockPhrase.SHEET) + " " + number;
    return name.isBlank() ? sheet : name + "\n" + sheet;
  }

  private static @Nullable CalloutPlan plan(
      Flat flat, List<CalloutPlan.Said> said, PackLeaders leaders, Lettering lettering) {
    if (said.isEmpty() || leaders == PackLeaders.NONE) {
      return null;
    }
    LeaderStyle style =
        switch (leaders) {
          case INCLINED -> LeaderStyle.INCLINED;
          case STRAIGHT -> LeaderStyle.STRAIGHT;
          default -> null;
        };
    return CalloutPlan.of(flat, said, style, lettering);
  }

  private void add(String path, String found, String expected) {
    described.faults().add(described.places().of(path), found, expected);
  }
}
