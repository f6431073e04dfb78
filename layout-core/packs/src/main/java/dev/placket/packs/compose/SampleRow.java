package dev.placket.packs.compose;

import dev.placket.packs.description.Described;
import dev.placket.packs.description.TextPosition;
import java.util.Collection;
import java.util.Map;

/**
 * A row of a file of samples, as it is written.
 *
 * @param csv the file of comma-separated values that it is in; empty for a workbook
 * @param fields its values by their headings
 * @param number under the headings, from 1
 * @param line of the file, or row of the worksheet
 * @param at where the description names the file
 * @param where the file and the row, for messages
 */
record SampleRow(
    String csv, Map<String, String> fields, int number, int line, TextPosition at, String where) {
  /** A value; empty where there is none. */
  String of(String column) {
    return fields.getOrDefault(column, "");
  }

  /** Whether one of these has a value. */
  boolean hasAny(Collection<String> columns) {
    return columns.stream().anyMatch(c -> !of(c).isEmpty());
  }

  /** Notes a slip in a column. */
  void fault(Described described, String column, String found, String expected) {
    described.faults().add(at, where + ", column " + column + ": " + found, expected);
  }

  /** Notes a word that is none of those known. */
  void unknown(Described described, String column, String what, Collection<String> known) {
    String before = where + ", column " + column + ": " + what;
    described.faults().unknown(at, before, of(column), known);
  }
}
