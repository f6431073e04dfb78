package dev.placket.packs.dimensions;

import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import dev.placket.packs.text.TextRun;
import java.util.List;

/**
 * A point of measure as it is drawn, in points on the sheet.
 *
 * @param code the point's
 * @param from where its line begins, at an arrowhead
 * @param to where it ends
 * @param strokes the parts of the line on both sides of its code, and extension lines
 * @param box the code
 * @param runs the code's letters
 */
public record LaidDimension(
    String code,
    PlanePoint from,
    PlanePoint to,
    List<List<PlanePoint>> strokes,
    Rect box,
    List<TextRun> runs) {
  /** The length of an arrowhead. */
  public static final double ARROW_MM = 2;

  /** Copies the lists. */
  public LaidDimension {
    strokes = strokes.stream().map(List::copyOf).toList();
    runs = List.copyOf(runs);
  }
}
