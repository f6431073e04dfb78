package dev.placket.demo.sheet;

import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Sheet;
import java.util.List;

/**
 * A sheet with the text of its cells set.
 *
 * @param sheet the ruled page as the library sees it
 * @param cells its labelled cells, in reading order
 */
public record Page(Sheet sheet, List<Cell> cells) {
  /** Copies the list. */
  public Page {
    cells = List.copyOf(cells);
  }

  static List<LabelledCell> labelled(List<Cell> cells) {
    return cells.stream().map(c -> new LabelledCell(c.name(), c.box())).toList();
  }
}
