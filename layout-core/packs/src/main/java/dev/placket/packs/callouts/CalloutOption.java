package dev.placket.packs.callouts;

import dev.placket.layout.flat.FlatShape;
import java.util.List;

/**
 * One way to place the labels of a flat.
 *
 * @param sides where they stand
 * @param callouts all of them, set
 * @param lane from the ink to the labels, in points
 * @param width of a column of labels, in points
 * @param shape the footprint that this asks for
 */
public record CalloutOption(
    CalloutSides sides, List<SetCallout> callouts, double lane, double width, FlatShape shape) {
  /** Copies the list. */
  public CalloutOption {
    callouts = List.copyOf(callouts);
  }
}
