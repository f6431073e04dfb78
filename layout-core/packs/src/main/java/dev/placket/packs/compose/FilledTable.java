package dev.placket.packs.compose;

import dev.placket.packs.description.PackTable;
import dev.placket.packs.table.TableText;
import java.util.Set;

/**
 * A table with its values.
 *
 * @param table its columns and rows
 * @param reversed the values that are set in white on black
 */
record FilledTable(PackTable table, Set<TableText.At> reversed) {
  /** One in black on white. */
  static FilledTable of(PackTable table) {
    return new FilledTable(table, Set.of());
  }
}
