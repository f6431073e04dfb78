package dev.placket.packs.compose;

import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.units.PlanePoint;
import dev.placket.packs.description.Described;
import java.util.Map;

/**
 * Checks spots of a flat; slips are noted.
 *
 * @param described the description
 */
record SpotChecks(Described described) {
  /** Whether a spot lies within what is drawn. */
  boolean inside(PlanePoint at, InkedBox ink, String path) {
    boolean inside =
        at.x() >= ink.left()
            && at.x() <= ink.right()
            && at.y() >= ink.top()
            && at.y() <= ink.bottom();
    if (!inside) {
      String box =
          String.format(
              java.util.Locale.ROOT,
              "one within it: %.4g to %.4g across, %.4g to %.4g down",
              ink.left(),
              ink.right(),
              ink.top(),
              ink.bottom());
      add(path, "a point beside what is drawn", box);
    }
    return inside;
  }

  /** Whether the flat has a point. */
  boolean isKnown(String point, Map<String, PlanePoint> points, String path) {
    if (!points.containsKey(point)) {
      described.faults().unknown(described.places().of(path), "the point", point, points.keySet());
    }
    return points.containsKey(point);
  }

  void add(String path, String found, String expected) {
    described.faults().add(described.places().of(path), found, expected);
  }
}
