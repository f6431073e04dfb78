package dev.placket.packs.issue;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The labelled cells of sheets in {@code fit.json}.
 *
 * <p>Cells of header and foot are the same on every sheet and stand with the first, whichever that
 * is.
 */
final class SheetCells {
  private SheetCells() {}

  /** Those of header and foot, by their names. */
  static Map<String, JsonTree> ofBands(JsonTree pack) {
    JsonTree first = pack.get("sheets").items().stream().findFirst().orElse(pack);
    Map<String, JsonTree> cells = new LinkedHashMap<>(first.get("cells").by("cell"));
    cells.keySet().removeIf(name -> !isOfBand(name));
    return cells;
  }

  /** Those of one sheet alone, by their names. */
  static Map<String, JsonTree> ofSheet(JsonTree sheet) {
    Map<String, JsonTree> cells = new LinkedHashMap<>(sheet.get("cells").by("cell"));
    cells.keySet().removeIf(SheetCells::isOfBand);
    return cells;
  }

  private static boolean isOfBand(String name) {
    return name.startsWith("header ") || name.startsWith("foot ");
  }
}
