package dev.placket.demo.workbook.place;

import dev.placket.demo.Refusal;
import dev.placket.demo.workbook.geometry.CellRange;
import dev.placket.demo.workbook.read.Workbook;
import dev.placket.demo.workbook.read.Worksheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Ranges that somebody named, as in {@code B5:H30} or by a defined name of the workbook.
 *
 * @param windows ranges that pictures may use; empty for all that is blank
 * @param labelled ranges that stay uncovered whatever they hold
 */
public record Asked(List<String> windows, List<String> labelled) {
  /** Nothing named. */
  public static final Asked NOTHING = new Asked(List.of(), List.of());

  /** Copies the lists. */
  public Asked {
    windows = List.copyOf(windows);
    labelled = List.copyOf(labelled);
  }

  /**
   * The windows by the names they were given.
   *
   * @throws Refusal if one does not exist, or a merged cell lies half inside it
   */
  Map<String, CellRange> windows(Workbook workbook, Worksheet worksheet) throws Refusal {
    Map<String, CellRange> ranges = new LinkedHashMap<>();
    for (String name : windows) {
      for (CellRange range : ranges(name, workbook, worksheet)) {
        checkMerged(name, range, worksheet);
        ranges.put(ranges.containsKey(name) ? name + " " + range : name, range);
      }
    }
    return ranges;
  }

  /**
   * The ranges to be kept clear.
   *
   * @throws Refusal if one does not exist
   */
  List<CellRange> labelled(Workbook workbook, Worksheet worksheet) throws Refusal {
    List<CellRange> ranges = new ArrayList<>();
    for (String name : labelled) {
      ranges.addAll(ranges(name, workbook, worksheet));
    }
    return ranges;
  }

  private static List<CellRange> ranges(String name, Workbook workbook, Worksheet worksheet)
      throws Refusal {
    try {
      return List.of(CellRange.parse(name));
    } catch (IllegalArgumentException e) {
      List<CellRange> named = workbook.ranges(name, worksheet.entry().index());
      if (named.isEmpty()) {
        throw Refusal.input(
            "worksheet '"
                + worksheet.name()
                + "': '"
                + name
                + "' is neither a range, as in B5:H30, nor a defined name of ranges; the workbook"
                + " defines "
                + (workbook.names().isEmpty() ? "none" : names(workbook))
                + ".");
      }
      return named;
    }
  }

  private static String names(Workbook workbook) {
    return String.join(
        ", ", workbook.names().stream().map(Workbook.DefinedName::name).distinct().toList());
  }

  private static void checkMerged(String name, CellRange range, Worksheet worksheet)
      throws Refusal {
    for (CellRange merged : worksheet.merges()) {
      if (merged.meets(range) && !range.contains(merged)) {
        throw Refusal.input(
            "worksheet '"
                + worksheet.name()
                + "': the merged cell "
                + merged
                + " lies half inside the window "
                + name
                + "; let the window hold all of it or none.");
      }
    }
  }
}
