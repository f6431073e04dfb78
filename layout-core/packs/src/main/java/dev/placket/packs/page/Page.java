package dev.placket.packs.page;

import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.units.Rect;
import dev.placket.packs.text.Cell;
import dev.placket.packs.text.TableRow;
import java.util.List;

/**
 * A sheet with the text of its cells set.
 *
 * @param sheet the ruled page as the library sees it
 * @param cells its labelled cells, in reading order
 * @param tints what is laid under the text, in points on the sheet
 * @param blacks what is laid under text in white
 * @param pictures pictures in its cells, as a logo
 * @param rows where the rows of its tables lie
 */
public record Page(
    Sheet sheet,
    List<Cell> cells,
    List<Rect> tints,
    List<Rect> blacks,
    List<Inked> pictures,
    List<TableRow> rows) {
  /** The grey of a tint, 0 black to 1 white: lighter than a tenth of black. */
  public static final double TINT = 0.93;

  /** Copies the lists. */
  public Page {
    cells = List.copyOf(cells);
    tints = List.copyOf(tints);
    blacks = List.copyOf(blacks);
    pictures = List.copyOf(pictures);
    rows = List.copyOf(rows);
  }

  /** The cells as the solver knows them: names and boxes. */
  public static List<LabelledCell> labelled(List<Cell> cells) {
    return cells.stream().map(c -> new LabelledCell(c.name(), c.box())).toList();
  }
}
