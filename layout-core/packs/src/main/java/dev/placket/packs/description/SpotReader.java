package dev.placket.packs.description;

import dev.placket.layout.units.PlanePoint;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads what of a flat is pointed at. */
final class SpotReader {
  private static final List<String> POINT = List.of("x", "y", "element");
  private static final List<String> CALLOUT = List.of("point", "text", "mark", "detail");

  private final NodeValues values;

  SpotReader(NodeValues values) {
    this.values = values;
  }

  PackSpots spots(@Nullable PackNode points, @Nullable PackNode callouts) {
    return new PackSpots(
        values.named(points, "x and y, or element", this::point),
        values.named(callouts, "point and text", this::callout));
  }

  private @Nullable PackPoint point(String id, PackNode node) {
    Entries e = new Entries(node, "point " + id, POINT, values.faults());
    PackNode named = e.get("element");
    PackNode across = e.get("x");
    PackNode down = e.get("y");
    if (named != null && across == null && down == null) {
      return new PackPoint(null, values.text(named, ""));
    }
    if (named != null || across == null || down == null) {
      values.faults().add(node.mark(), "the point '" + id + "'", "either x and y, or element");
      return null;
    }
    Double x = values.coordinate(across);
    Double y = values.coordinate(down);
    return x == null || y == null ? null : new PackPoint(new PlanePoint(x, y), null);
  }

  private PackCallout callout(String id, PackNode node) {
    Entries e = new Entries(node, "callout " + id, CALLOUT, values.faults());
    PackNode mark = e.get("mark");
    PackNode text = mark == null ? e.need("text") : e.get("text");
    return new PackCallout(
        values.text(e.need("point"), ""),
        values.words(text, Words.NONE),
        mark == null ? "" : values.text(mark, ""),
        values.text(e.get("detail"), ""));
  }
}
