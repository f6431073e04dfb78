package dev.placket.layout.callout;

import dev.placket.layout.units.PlanePoint;

/**
 * A label to be placed in a column, tied to a spot; lengths are printed points, y down.
 *
 * @param id unique in its column
 * @param spot what it points at, on the sheet
 * @param height its height; above zero
 * @param port how far below its top the leader ends: the middle of a line of its text
 */
public record CalloutLabel(String id, PlanePoint spot, double height, double port) {
  /**
   * Checks the port.
   *
   * @throws IllegalArgumentException if the leader would not end at the label
   */
  public CalloutLabel {
    if (!(height > 0) || !(port >= 0) || port > height) {
      throw new IllegalArgumentException(
          "callout " + id + ": a port at " + port + " of a height of " + height);
    }
  }
}
