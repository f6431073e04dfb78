package dev.placket.packs.page;

import dev.placket.layout.sheet.Rule;
import dev.placket.layout.units.Rect;
import dev.placket.packs.callouts.LaidText;
import dev.placket.packs.dimensions.LaidDimension;
import dev.placket.packs.text.TextRun;
import java.util.List;

/**
 * A flat as it is put on a page.
 *
 * @param art what is drawn
 * @param ink where its ink lies, in points on the sheet
 * @param alternative what it shows, for readers who do not see it
 * @param caption the lines under it
 * @param marks lines drawn beside it
 * @param callouts labels tied to its spots
 * @param dimensions lines of points of measure
 */
public record Inked(
    Art art,
    Rect ink,
    String alternative,
    List<TextRun> caption,
    List<Rule> marks,
    List<LaidText> callouts,
    List<LaidDimension> dimensions) {
  /** Copies the lists. */
  public Inked {
    caption = List.copyOf(caption);
    marks = List.copyOf(marks);
    callouts = List.copyOf(callouts);
    dimensions = List.copyOf(dimensions);
  }
}
