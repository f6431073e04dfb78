package dev.placket.packs.flats;

import dev.placket.packs.callouts.CalloutPlan;
import dev.placket.packs.dimensions.DimensionPlan;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What of a flat is pointed at, besides the elements of its drawing.
 *
 * @param points names of points, which the flat has a place for
 * @param callouts texts tied to points
 * @param plan how the callouts may stand beside it; null where they are not drawn
 * @param dimensions the lines of points of measure, and lanes for them
 */
public record FlatSpots(
    List<String> points,
    List<Callout> callouts,
    @Nullable CalloutPlan plan,
    DimensionPlan dimensions) {
  /** Nothing is pointed at. */
  public static final FlatSpots NONE =
      new FlatSpots(List.of(), List.of(), null, DimensionPlan.NONE);

  /** Copies the lists. */
  public FlatSpots {
    points = List.copyOf(points);
    callouts = List.copyOf(callouts);
  }

  /**
   * A text tied to points.
   *
   * @param id its identifier
   * @param points of the flat, one or more
   * @param text what it says
   */
  public record Callout(String id, List<String> points, String text) {
    /** Copies the list. */
    public Callout {
      points = List.copyOf(points);
    }
  }
}
