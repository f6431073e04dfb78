package dev.placket.benchmarks.yardstick;

import dev.placket.layout.units.Rect;
import java.util.List;

/**
 * What a yardstick reaches on a sheet.
 *
 * @param scale the common scale, 0 where it finds nothing
 * @param boxes where each flat lies at that scale, in the order of the sheet, in points
 */
public record Packing(double scale, List<Rect> boxes) {
  /** Nothing found. */
  public static final Packing NONE = new Packing(0, List.of());

  /** Copies the list. */
  public Packing {
    boxes = List.copyOf(boxes);
  }
}
