package dev.placket.packs.dimensions;

import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import dev.placket.packs.text.TextRun;
import java.util.List;

/**
 * A point of measure as it is drawn, in points on the sheet.
 *
 * @param code the point's
 * @param line from arrowhead to arrowhead; two points, or more along a curve
 * @param strokes the parts of the line on both sides of its code, and extension lines
 * @param box the code
 * @param runs the code's letters
 * @param outside whether it lies in a lane outside of the ink
 */
public record LaidDimension(
    String code,
    List<PlanePoint> line,
    List<List<PlanePoint>> strokes,
    Rect box,
    List<TextRun> runs,
    boolean outside) {
  /** The length of an arrowhead. */
  public static final double ARROW_MM = 2;

  /** Copies the lists. */
  public LaidDimension {
    line = List.copyOf(line);
    strokes = strokes.stream().map(List::copyOf).toList();
    runs = List.copyOf(runs);
  }
}
