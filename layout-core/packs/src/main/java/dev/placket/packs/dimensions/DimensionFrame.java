package dev.placket.packs.dimensions;

import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * Where a flat lies on its sheet, for its measures. Lengths are in points.
 *
 * @param place where a point of the drawing lies on the sheet
 * @param ink where its ink lies
 * @param scale points to the drawing unit
 * @param lanes the lanes outside of the ink
 * @param dark what share of a box on the sheet the drawing covers
 * @param others lines of callouts on the flat, which codes keep clear of
 */
public record DimensionFrame(
    Function<PlanePoint, PlanePoint> place,
    Rect ink,
    double scale,
    Lanes lanes,
    ToDoubleFunction<Rect> dark,
    List<List<PlanePoint>> others) {
  /** Copies the list. */
  public DimensionFrame {
    others = others.stream().map(List::copyOf).toList();
  }

  /** The same with other lanes. */
  public DimensionFrame with(Lanes other) {
    return new DimensionFrame(place, ink, scale, other, dark, others);
  }
}
