package dev.placket.workbooks.place;

import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.Place;
import dev.placket.workbooks.geometry.CellRange;
import dev.placket.workbooks.geometry.Grid;
import dev.placket.workbooks.read.Workbook;
import dev.placket.workbooks.read.Worksheet;
import dev.placket.workbooks.refusal.WorkbookSetting;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Ranges that the caller named, as in {@code B5:H30} or by a defined name of the workbook.
 *
 * @param windows ranges that pictures may use; empty for all that is blank
 * @param labelled ranges that stay uncovered whatever they hold
 */
public record Asked(List<String> windows, List<String> labelled) {
  private static final String CELLS = "\\$?[A-Za-z]{1,3}\\$?[0-9]{1,9}";

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
      List<CellRange> named = workbook.ranges(name, worksheet.entry());
      if (named.isEmpty()) {
        throw Refusal.input(
            unknown(name, workbook, worksheet.entry()).at(Place.worksheet(worksheet.name())));
      }
      return named;
    }
  }

  private static Fault unknown(String name, Workbook workbook, Workbook.Entry entry) {
    if (name.matches(CELLS + "(:" + CELLS + ")?")) {
      return wrong(
              "the range '"
                  + name
                  + "' leaves the worksheet, which ends with "
                  + CellRange.cell(Grid.COLUMNS - 1, Grid.ROWS - 1))
          .remedy("name one inside it");
    }
    List<String> elsewhere = workbook.sheets(name, entry);
    if (!elsewhere.isEmpty()) {
      return wrong("the name '" + name + "' lies on " + String.join(", ", elsewhere))
          .remedy("place the flats there", WorkbookSetting.WORKSHEET)
          .remedy("name a range of this worksheet");
    }
    return workbook
        .named(name, entry.index())
        .map(
            f ->
                wrong("the name '" + name + "' stands for " + f + ", which is no range of cells")
                    .remedy("mend it"))
        .orElseGet(
            () ->
                wrong(
                        "'"
                            + name
                            + "' is neither a range, as in B5:H30, nor a defined name of ranges")
                    .remedy(
                        "the workbook defines "
                            + (workbook.names().isEmpty() ? "none" : names(workbook))));
  }

  private static Fault wrong(String found) {
    return Fault.of(Fault.Kind.SETTING, "", found);
  }

  /** Of some worksheets those on which all of it can be found; all where it is found on none. */
  public List<Workbook.Entry> on(Workbook workbook, List<Workbook.Entry> worksheets) {
    List<Workbook.Entry> found =
        worksheets.stream()
            .filter(
                w ->
                    Stream.concat(windows.stream(), labelled.stream())
                        .allMatch(n -> on(n, workbook, w)))
            .toList();
    return found.isEmpty() ? worksheets : found;
  }

  private static boolean on(String name, Workbook workbook, Workbook.Entry entry) {
    try {
      return CellRange.parse(name) != null;
    } catch (IllegalArgumentException e) {
      return !workbook.ranges(name, entry).isEmpty();
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
            Fault.content("", "the merged cell " + merged + " lies half inside the window " + name)
                .at(Place.worksheet(worksheet.name()))
                .remedy("let the window contain all of it or none"));
      }
    }
  }
}
