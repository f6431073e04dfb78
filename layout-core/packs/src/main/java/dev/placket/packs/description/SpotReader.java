package dev.placket.packs.description;

import dev.placket.layout.callout.LeaderEnd;
import dev.placket.layout.units.PlanePoint;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads what of a flat is pointed at. */
final class SpotReader {
  private static final List<String> POINT = List.of("x", "y", "element", "across", "down");
  private static final List<String> CALLOUT =
      List.of("point", "text", "mark", "detail", "region", "end");

  private static final Map<String, LeaderEnd> ENDS =
      Map.of("dot", LeaderEnd.DOT, "arrow", LeaderEnd.ARROW, "none", LeaderEnd.NONE);

  private static final List<String> DIMENSION =
      List.of("from", "to", "run", "beside", "edge", "along");
  private static final Map<String, PackDimension.Run> RUNS =
      Spelled.words(PackDimension.Run.values());

  private final NodeValues values;

  SpotReader(NodeValues values) {
    this.values = values;
  }

  PackSpots spots(
      @Nullable PackNode points, @Nullable PackNode callouts, @Nullable PackNode dimensions) {
    return new PackSpots(
        values.named(points, "x and y, element, or across and down", this::point),
        values.named(callouts, "point and text", this::callout),
        values.named(dimensions, "from and to", this::dimension));
  }

  private @Nullable PackPoint point(String id, PackNode node) {
    Entries e = new Entries(node, "point " + id, POINT, values.faults());
    PackNode named = e.get("element");
    PackNode x = e.get("x");
    PackNode y = e.get("y");
    PackNode across = e.get("across");
    PackNode down = e.get("down");
    boolean shares = across != null && down != null;
    boolean place = x != null && y != null;
    boolean whole = place == (x != null || y != null) && shares == (across != null || down != null);
    if (!whole || shares && (place || named != null) || !shares && !place && named == null) {
      values
          .faults()
          .add(node.mark(), "the point '" + id + "'", "x and y, element, or across and down");
      return null;
    }
    if (across != null && down != null) {
      PlanePoint share = at(values.percent(across), values.percent(down));
      return share == null ? null : new PackPoint(null, null, share);
    }
    PlanePoint at = x != null && y != null ? at(values.coordinate(x), values.coordinate(y)) : null;
    if (named != null) {
      return new PackPoint(at, values.text(named, ""), null);
    }
    return at == null ? null : new PackPoint(at, null, null);
  }

  private static @Nullable PlanePoint at(@Nullable Double x, @Nullable Double y) {
    return x == null || y == null ? null : new PlanePoint(x, y);
  }

  private PackCallout callout(String id, PackNode node) {
    Entries e = new Entries(node, "callout " + id, CALLOUT, values.faults());
    PackNode mark = e.get("mark");
    PackNode text = mark == null ? e.need("text") : e.get("text");
    return new PackCallout(
        points(e.need("point")),
        values.words(text),
        mark == null ? "" : values.text(mark, ""),
        values.text(e.get("detail"), ""),
        values.number(e.get("region")),
        values.choice(e.get("end"), ENDS, "the end of a leader"));
  }

  private PackDimension dimension(String code, PackNode node) {
    Entries e = new Entries(node, "dimension " + code, DIMENSION, values.faults());
    PackDimension.Run run = values.choice(e.get("run"), RUNS, "the run of a line");
    PackNode beside = e.get("beside");
    Double away = beside == null ? null : values.coordinate(beside);
    PackNode edge = e.get("edge");
    PackNode along = e.get("along");
    PackNode to = edge == null ? e.need("to") : e.get("to");
    List<String> corners = edge == null ? List.of() : values.oneOrMore(edge, "points of the flat");
    if (edge != null && (corners.size() != 2 || to != null)) {
      values
          .faults()
          .add(
              edge.mark(),
              to == null ? corners.size() + " points of an edge" : "an edge beside 'to'",
              to == null ? "two" : "one of them");
    }
    if (along != null && (edge != null || run != null)) {
      String other = run == null ? "an edge" : "a run";
      values.faults().add(along.mark(), other + " beside 'along'", "one of them");
    }
    return new PackDimension(
        values.text(e.need("from"), ""),
        values.text(to, ""),
        run == null ? PackDimension.Run.STRAIGHT : run,
        away,
        corners,
        values.text(along, ""));
  }

  private List<String> points(@Nullable PackNode node) {
    List<String> points = values.oneOrMore(node, "points of the flat");
    if (node instanceof PackNode.Items && points.isEmpty()) {
      values.faults().add(node.mark(), "no point", "one or more points of the flat");
    }
    for (int i = 1; node != null && i < points.size(); i++) {
      if (points.subList(0, i).contains(points.get(i))) {
        values.faults().add(node.mark(), "the point '" + points.get(i) + "' twice", "it once");
      }
    }
    return points;
  }
}
