package dev.placket.packs.description;

import java.util.Map;

/**
 * What of a flat is pointed at. Names of points and of callouts are identifiers: no two of a pack
 * share one, and none comes back once it is retired.
 *
 * @param points spots by their identifiers
 * @param callouts texts tied to spots, by their identifiers
 * @param dimensions lines of points of measure, by their codes
 */
public record PackSpots(
    Map<String, PackPoint> points,
    Map<String, PackCallout> callouts,
    Map<String, PackDimension> dimensions) {
  /** Nothing is pointed at. */
  public static final PackSpots NONE = new PackSpots(Map.of(), Map.of(), Map.of());

  /** Copies the maps. */
  public PackSpots {
    points = Pack.ordered(points);
    callouts = Pack.ordered(callouts);
    dimensions = Pack.ordered(dimensions);
  }
}
