package dev.placket.packs.text;

import dev.placket.layout.units.Rect;
import java.util.List;

/**
 * A ruled cell with its text set.
 *
 * @param name what messages and {@code fit.json} call it
 * @param box where it lies, in points on the sheet
 * @param runs its lines of text, caption first
 */
public record Cell(String name, Rect box, List<TextRun> runs) {
  /** Copies the list. */
  public Cell {
    runs = List.copyOf(runs);
  }
}
