package dev.placket.packs.flats;

import dev.placket.packs.callouts.CalloutPlan;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What of a flat is pointed at, besides the elements of its drawing.
 *
 * @param points names of points, which the flat has a place for
 * @param callouts texts tied to points
 * @param plan how the callouts may stand beside it; null where they are not drawn
 */
public record FlatSpots(List<String> points, List<Callout> callouts, @Nullable CalloutPlan plan) {
  /** Nothing is pointed at. */
  public static final FlatSpots NONE = new FlatSpots(List.of(), List.of(), null);

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
