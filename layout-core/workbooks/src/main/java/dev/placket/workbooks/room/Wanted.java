package dev.placket.workbooks.room;

import dev.placket.workbooks.geometry.CellRange;
import java.util.List;
import java.util.Map;

/**
 * What a description says about a worksheet's room.
 *
 * @param windows ranges that pictures may use, by name; empty for all that is blank
 * @param boxes whether each range is a box of its own, also beside another
 * @param labelled ranges that stay uncovered whatever they hold
 * @param least the narrowest room that any of the flats could use, in points
 * @param leastHeight the lowest
 */
public record Wanted(
    Map<String, CellRange> windows,
    boolean boxes,
    List<CellRange> labelled,
    double least,
    double leastHeight) {
  /** Copies the list. */
  public Wanted {
    labelled = List.copyOf(labelled);
  }
}
