package dev.placket.packs.folder;

import dev.placket.layout.units.Rect;
import dev.placket.packs.text.CellText;
import dev.placket.packs.text.Lettering;
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
    return wide.holds(notes, lettering) ? wide : new FlowedHeader(inside, notes, lettering).lay();
  }

  /** Values in English stay in two rows: one that is too long is refused, as it always was. */
  private boolean holds(PackNotes notes, Lettering lettering) {
    boolean values = !notes.phrases().isEnglish();
    return boxes.entrySet().stream()
        .allMatch(e -> holds(e.getKey(), e.getValue(), values, notes, lettering));
  }

  private static boolean holds(
      HeaderSpot spot, Rect box, boolean values, PackNotes notes, Lettering lettering) {
    boolean counted = values && spot != HeaderSpot.KIND;
    String value = counted ? spot.value(notes, HeaderSpot.widest(notes)) : "";
    return CellText.fits(spot.caption(notes), value, box, spot.steps(), lettering);
  }

  /** Whether the label's name has the kind of sheet below it, rather than above. */
  boolean twoRows() {
    return columns.size() > 2;
  }
}
