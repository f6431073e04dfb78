package dev.placket.packs.compose;

import dev.placket.layout.flat.Flat;
import dev.placket.layout.units.PlanePoint;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackDimension;
import dev.placket.packs.dimensions.DimensionRun;
import dev.placket.packs.dimensions.MeasureLine;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.path.DrawnPath;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Finds the lines of measure of a flat; slips are noted. */
final class DimensionSetter {
  /** A spot may lie so far off the line that is measured along, as a share of the longest side. */
  private static final double OFF = 0.02;

  private final SpotChecks spots;

  DimensionSetter(Described described) {
    this.spots = new SpotChecks(described);
  }

  /** Those that can be drawn. */
  List<MeasureLine> of(FlatSetter.Read read, Flat flat) {
    List<MeasureLine> all = new ArrayList<>();
    read.flat()
        .spots()
        .dimensions()
        .forEach(
            (code, said) -> {
              String path = read.path() + "/dimensions/" + code;
              MeasureLine its = line(code, said, read, flat, path);
              if (its != null && isDrawable(its, flat, path)) {
                all.add(its);
              }
            });
    return all;
  }

  private @Nullable MeasureLine line(
      String code, PackDimension said, FlatSetter.Read read, Flat flat, String path) {
    if (!spots.isKnown(said.from(), flat.points(), path + "/from")) {
      return null;
    }
    PlanePoint from = Objects.requireNonNull(flat.points().get(said.from()));
    if (!said.edge().isEmpty()) {
      PlanePoint foot = foot(from, said, flat, path + "/edge");
      return foot == null
          ? null
          : new MeasureLine(code, from, foot, DimensionRun.STRAIGHT, said.beside());
    }
    if (!spots.isKnown(said.to(), flat.points(), path + "/to")) {
      return null;
    }
    PlanePoint to = Objects.requireNonNull(flat.points().get(said.to()));
    DimensionRun run = DimensionRun.valueOf(said.run().name());
    return said.along().isEmpty()
        ? new MeasureLine(code, from, to, run, said.beside())
        : along(code, said, read, flat, path + "/along");
  }

  /** Where the line through two points is met at right angles. */
  private @Nullable PlanePoint foot(PlanePoint from, PackDimension said, Flat flat, String path) {
    if (said.edge().size() != 2) {
      return null;
    }
    boolean both = true;
    for (String corner : said.edge()) {
      both &= spots.isKnown(corner, flat.points(), path);
    }
    if (!both) {
      return null;
    }
    PlanePoint a = Objects.requireNonNull(flat.points().get(said.edge().get(0)));
    PlanePoint b = Objects.requireNonNull(flat.points().get(said.edge().get(1)));
    double x = b.x() - a.x();
    double y = b.y() - a.y();
    double square = x * x + y * y;
    if (square == 0) {
      spots.add(path, "an edge between two points at one place", "two points that are apart");
      return null;
    }
    double share = ((from.x() - a.x()) * x + (from.y() - a.y()) * y) / square;
    return new PlanePoint(a.x() + share * x, a.y() + share * y);
  }

  private @Nullable MeasureLine along(
      String code, PackDimension said, FlatSetter.Read read, Flat flat, String path) {
    PlanePoint from = Objects.requireNonNull(flat.points().get(said.from()));
    PlanePoint to = Objects.requireNonNull(flat.points().get(said.to()));
    DrawnPath drawn = read.picture() instanceof Drawing d ? d.path(said.along()) : null;
    if (drawn == null) {
      spots.add(
          path,
          "'" + said.along() + "', which is no single line of the drawing",
          "the id of an element that draws one path");
      return null;
    }
    DrawnPath.Part part = drawn.between(from, to);
    double most = OFF * flat.ink().longestSide();
    if (part.off() > most) {
      String found = "'%s', from which a spot of %s lies %.4g away";
      spots.add(
          path,
          String.format(Locale.ROOT, found, said.along(), code, part.off()),
          String.format(Locale.ROOT, "spots on it, within %.4g", most));
      return null;
    }
    return new MeasureLine(
        code, from, to, DimensionRun.ALONG, said.beside(), part.way(), part.length());
  }

  private boolean isDrawable(MeasureLine its, Flat flat, String path) {
    if (its.length() == 0) {
      spots.add(path, "a line without length", "spots that are apart this way, or another run");
      return false;
    }
    for (PlanePoint end : its.drawn()) {
      if (!spots.inside(end, flat.ink(), path)) {
        return false;
      }
    }
    return true;
  }
}
