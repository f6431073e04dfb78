package dev.placket.workbooks.read;

import dev.placket.workbooks.geometry.CellRange;
import java.util.List;
import java.util.Optional;

/**
 * A workbook before any of its worksheets is read.
 *
 * @param part its main part
 * @param strict whether it keeps to the strict conformance class, which has namespaces of its own
 * @param styles how its cells look
 * @param strings the part of shared texts, empty for none
 * @param worksheets in the order of the workbook
 * @param names its defined names
 */
public record Workbook(
    String part,
    boolean strict,
    CellStyles styles,
    String strings,
    List<Entry> worksheets,
    List<DefinedName> names) {
  /**
   * A worksheet by name.
   *
   * @param name what people call it
   * @param part its part
   * @param index its place among all sheets of the workbook, charts counted
   * @param hidden whether it is not shown
   */
  public record Entry(String name, String part, int index, boolean hidden) {}

  /**
   * A defined name.
   *
   * @param name as stated
   * @param index the sheet it belongs to, -1 for the whole workbook
   * @param text the formula it stands for
   */
  public record DefinedName(String name, int index, String text) {}

  /** Copies the lists. */
  public Workbook {
    worksheets = List.copyOf(worksheets);
    names = List.copyOf(names);
  }

  /** The worksheet of that name, whatever its letter case. */
  public Optional<Entry> worksheet(String name) {
    return worksheets.stream().filter(w -> w.name().equalsIgnoreCase(name)).findFirst();
  }

  /** The ranges that a name stands for on a sheet; none for a name that has none there. */
  public List<CellRange> ranges(String name, Entry sheet) {
    return named(name, sheet.index())
        .map(formula -> NamedRanges.ranges(formula, sheet.name()))
        .orElse(List.of());
  }

  /** The sheets that the ranges of a name lie on, as far as it says so. */
  public List<String> sheets(String name, Entry from) {
    return named(name, from.index()).map(NamedRanges::of).orElse(List.of()).stream()
        .map(NamedRanges.Reference::sheet)
        .filter(s -> !s.isEmpty())
        .distinct()
        .toList();
  }

  /** What a name stands for on a sheet; names of the sheet go before names of the workbook. */
  public Optional<String> named(String name, int index) {
    return names.stream()
        .filter(n -> n.name().equalsIgnoreCase(name) && (n.index() == index || n.index() < 0))
        .max(java.util.Comparator.comparingInt(DefinedName::index))
        .map(DefinedName::text);
  }
}
