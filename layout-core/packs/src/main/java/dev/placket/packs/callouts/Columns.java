package dev.placket.packs.callouts;

import dev.placket.layout.units.PlanePoint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** Which labels stand in which column: left and right by where their spots lie. */
final class Columns {
  private Columns() {}

  /** The left column and the right one; either may be empty. */
  static List<List<SetCallout>> of(
      CalloutSides sides, List<SetCallout> all, Map<String, PlanePoint> points) {
    return switch (sides) {
      case LEFT -> List.of(all, List.of());
      case RIGHT -> List.of(List.of(), all);
      case BOTH -> divided(all, points, all.size() / 2);
    };
  }

  /** So many of those farthest left in the left column, the rest in the right one. */
  static List<List<SetCallout>> divided(
      List<SetCallout> all, Map<String, PlanePoint> points, int left) {
    Comparator<SetCallout> across = Comparator.comparingDouble(c -> c.said().across(points));
    List<SetCallout> sorted = new ArrayList<>(all);
    sorted.sort(across);
    return List.of(
        List.copyOf(sorted.subList(0, left)), List.copyOf(sorted.subList(left, all.size())));
  }
}
