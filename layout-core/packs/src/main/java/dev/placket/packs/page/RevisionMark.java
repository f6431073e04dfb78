package dev.placket.packs.page;

import dev.placket.layout.sheet.Rule;
import dev.placket.layout.units.PlanePoint;
import dev.placket.packs.text.TextRun;
import java.util.List;

/**
 * A triangle with the code of a revision beside what it changed, and what was there before, struck
 * through.
 *
 * @param triangle its corners, in points on the sheet; none where only an old value stands
 * @param runs the code, and the old value
 * @param strikes the lines through the old value
 */
public record RevisionMark(List<PlanePoint> triangle, List<TextRun> runs, List<Rule> strikes) {
  /** Copies the lists. */
  public RevisionMark {
    triangle = List.copyOf(triangle);
    runs = List.copyOf(runs);
    strikes = List.copyOf(strikes);
  }
}
