package dev.placket.layout.check;

import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import java.util.List;

/**
 * A leader of a callout to be judged, in points on the sheet. A callout with several has one of
 * these for each, with the same label.
 *
 * @param id the callout's identifier
 * @param flat the flat that it belongs to
 * @param spot what it points at
 * @param ring the radius of the ring round the spot, where the leader starts; 0 for none
 * @param label where its text and ring stand
 * @param leader the points of its line
 * @param room the flat's footprint, which it stays in
 * @param ink the flat's ink, which the label stays off
 */
public record CheckedCallout(
    String id,
    String flat,
    PlanePoint spot,
    double ring,
    Rect label,
    List<PlanePoint> leader,
    Rect room,
    Rect ink) {
  /** Copies the list. */
  public CheckedCallout {
    leader = List.copyOf(leader);
  }
}
