package dev.placket.layout.callout;

import dev.placket.layout.units.PlanePoint;
import java.util.List;

/**
 * A label to be placed in a column, tied to one spot or several; lengths are printed points, y
 * down.
 *
 * @param id unique in its column
 * @param spots where its leaders start, on the sheet; one or more
 * @param height its height; above zero
 * @param port how far below its top the leaders end: the middle of a line of its text
 */
public record CalloutLabel(String id, List<PlanePoint> spots, double height, double port) {
  /**
   * Copies the list and checks the port.
   *
   * @throws IllegalArgumentException if no leader starts, or none would end at the label
   */
  public CalloutLabel {
    spots = List.copyOf(spots);
    if (spots.isEmpty() || !(height > 0) || !(port >= 0) || port > height) {
      throw new IllegalArgumentException(
          "callout %s: %d spots, a port at %s of a height of %s"
              .formatted(id, spots.size(), port, height));
    }
  }

  /** How far down its spots lie, on the average. */
  double level() {
    return spots.stream().mapToDouble(PlanePoint::y).average().orElseThrow();
  }

  /** A label with one leader. */
  public CalloutLabel(String id, PlanePoint spot, double height, double port) {
    this(id, List.of(spot), height, port);
  }
}
