package dev.placket.workbooks.read;

import dev.placket.workbooks.geometry.CellRange;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * Reads ranges of a worksheet. One that is none, as {@code #REF!} after its cells were deleted,
 * covers nothing and is noted.
 */
final class Ranges {
  private final Collection<String> notes;

  /**
   * A reader.
   *
   * @param notes takes what was left out
   */
  Ranges(Collection<String> notes) {
    this.notes = notes;
  }

  /**
   * The ranges of a list parted by blanks.
   *
   * @param of whose range it is, in words
   */
  List<CellRange> of(String of, String list) {
    List<CellRange> ranges = new ArrayList<>();
    for (String each : list.strip().split("\\s+")) {
      try {
        if (!each.isEmpty()) {
          ranges.add(CellRange.parse(each));
        }
      } catch (IllegalArgumentException e) {
        notes.add("its " + of + " names no cells ('" + each + "') and is left out");
      }
    }
    return ranges;
  }
}
