package dev.placket.packs.flats;

import java.util.List;

/**
 * What of a flat is pointed at, besides the elements of its drawing.
 *
 * @param points names of points, which the flat has a place for
 * @param callouts texts tied to points
 */
public record FlatSpots(List<String> points, List<Callout> callouts) {
  /** Nothing is pointed at. */
  public static final FlatSpots NONE = new FlatSpots(List.of(), List.of());

  /** Copies the lists. */
  public FlatSpots {
    points = List.copyOf(points);
    callouts = List.copyOf(callouts);
  }

  /**
   * A text tied to a point.
   *
   * @param id its identifier
   * @param point a point of the flat
   * @param text what it says
   */
  public record Callout(String id, String point, String text) {}
}
