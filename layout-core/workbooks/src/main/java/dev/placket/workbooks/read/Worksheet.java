package dev.placket.workbooks.read;

import dev.placket.workbooks.geometry.CellRange;
import dev.placket.workbooks.geometry.Grid;
import dev.placket.workbooks.geometry.PrintSetup;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A worksheet as far as pictures need to know it.
 *
 * @param entry its name and part
 * @param grid its columns and rows
 * @param marks what stays uncovered; pictures of the workbook are among {@code things}
 * @param rules drawn rules
 * @param merges merged cells
 * @param used the cells that hold or show anything; null for a bare worksheet
 * @param things pictures and shapes that are there already
 * @param drawing its drawing part, null without one
 * @param setup how it goes on paper
 * @param notes what a designer should know about how it was read
 */
public record Worksheet(
    Workbook.Entry entry,
    Grid grid,
    List<Mark> marks,
    List<RuleLine> rules,
    List<CellRange> merges,
    @Nullable CellRange used,
    List<DrawnThing> things,
    @Nullable String drawing,
    PrintSetup setup,
    List<String> notes) {
  /** Copies the lists. */
  public Worksheet {
    marks = List.copyOf(marks);
    rules = List.copyOf(rules);
    merges = List.copyOf(merges);
    things = List.copyOf(things);
    notes = List.copyOf(notes);
  }

  /** Its name. */
  public String name() {
    return entry.name();
  }

  /**
   * Whether nothing is on it.
   *
   * @param own how the names of pictures begin that do not count
   */
  public boolean bare(String own) {
    return used == null && things.stream().allMatch(t -> t.name().startsWith(own));
  }
}
