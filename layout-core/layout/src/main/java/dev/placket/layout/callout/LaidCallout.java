package dev.placket.layout.callout;

import dev.placket.layout.units.PlanePoint;
import java.util.List;

/**
 * A label in its place.
 *
 * @param id the label's
 * @param top its top edge on the sheet, in points
 * @param leaders one for each spot, from there to the label: two points, or three where it bends
 */
public record LaidCallout(String id, double top, List<List<PlanePoint>> leaders) {
  /** Copies the lists. */
  public LaidCallout {
    leaders = leaders.stream().map(List::copyOf).toList();
  }
}
