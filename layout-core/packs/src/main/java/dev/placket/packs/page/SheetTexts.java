package dev.placket.packs.page;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What stands in the cells and tables of a sheet, fields filled in; cells in its first language.
 *
 * @param cells the texts of each labelled cell, by its name
 * @param tables the tables, by their names
 */
public record SheetTexts(Map<String, CellText> cells, Map<String, Table> tables) {
  /** Nothing. */
  public static final SheetTexts NONE = new SheetTexts(Map.of(), Map.of());

  /** Copies the maps. */
  public SheetTexts {
    cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
    tables = Collections.unmodifiableMap(new LinkedHashMap<>(tables));
  }

  /**
   * A labelled cell.
   *
   * @param caption the small line at its top
   * @param text what it holds
   */
  public record CellText(String caption, String text) {}

  /**
   * A table.
   *
   * @param headings of its columns
   * @param rows its values, the first of a row names it
   */
  public record Table(List<String> headings, List<List<String>> rows) {
    /** Copies the lists. */
    public Table {
      headings = List.copyOf(headings);
      rows = rows.stream().map(List::copyOf).toList();
    }
  }
}
