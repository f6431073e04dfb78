package dev.placket.packs.folder;

import dev.placket.layout.units.Rect;
import dev.placket.packs.text.Lettering;
import dev.placket.packs.text.TextBlock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the values of the header lie.
 *
 * @param columns the grid lines that it lays across the sheet, its edges included
 * @param boxes the cell of each value, in reading order
 * @param bottom where it ends, in points from the top of the sheet
 */
record HeaderLayout(List<Double> columns, Map<HeaderSpot, Rect> boxes, double bottom) {
  /** Copies the collections. */
  HeaderLayout {
    columns = List.copyOf(columns);
    boxes = new LinkedHashMap<>(boxes);
  }

  /** In two rows where the sheet is wide enough for all captions, else in as many as it takes. */
  static HeaderLayout of(Rect inside, PackNotes notes, Lettering lettering) {
    HeaderLayout wide = WideHeader.lay(inside);
    return wide.holdsCaptions(lettering) ? wide : new FlowedHeader(inside, notes, lettering).lay();
  }

  private boolean holdsCaptions(Lettering lettering) {
    return boxes.entrySet().stream()
        .allMatch(
            e ->
                lettering.width(e.getKey().caption(), Lettering.CAPTION)
                    <= e.getValue().width() - 2 * TextBlock.INSET.pt());
  }

  /** Whether the label's name has the kind of sheet below it, rather than above. */
  boolean twoRows() {
    return columns.size() > 2;
  }
}
