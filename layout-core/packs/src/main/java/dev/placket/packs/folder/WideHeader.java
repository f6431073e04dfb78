package dev.placket.packs.folder;

import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.GridTrack;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import dev.placket.packs.language.StockPhrase;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The header in two rows. Its columns are shares, written as the millimetres they have on landscape
 * A4.
 */
final class WideHeader {
  static final Length ROW = Length.mm(10);
  private static final double[] COLUMNS = {40, 34, 66, 22, 18, 18, 22, 29, 28};

  /** First column, first row, last column, last row, by caption. */
  private static final Map<StockPhrase, int[]> AREAS =
      Map.ofEntries(
          Map.entry(StockPhrase.FLAT_SHEET, new int[] {0, 0, 1, 2}),
          Map.entry(StockPhrase.STYLE_NUMBER, new int[] {1, 0, 2, 1}),
          Map.entry(StockPhrase.STYLE_NAME, new int[] {2, 0, 3, 1}),
          Map.entry(StockPhrase.SEASON, new int[] {3, 0, 4, 1}),
          Map.entry(StockPhrase.STAGE, new int[] {4, 0, 6, 1}),
          Map.entry(StockPhrase.REVISION, new int[] {6, 0, 7, 1}),
          Map.entry(StockPhrase.DATE, new int[] {7, 0, 8, 1}),
          Map.entry(StockPhrase.SHEET, new int[] {8, 0, 9, 1}),
          Map.entry(StockPhrase.SIZE_RANGE, new int[] {1, 1, 2, 2}),
          Map.entry(StockPhrase.FABRIC, new int[] {2, 1, 3, 2}),
          Map.entry(StockPhrase.SAMPLE_SIZE, new int[] {3, 1, 4, 2}),
          Map.entry(StockPhrase.UNIT, new int[] {4, 1, 5, 2}),
          Map.entry(StockPhrase.FACTORY, new int[] {5, 1, 8, 2}),
          Map.entry(StockPhrase.ISSUED_BY, new int[] {8, 1, 9, 2}));

  private WideHeader() {}

  static HeaderLayout lay(Rect inside) {
    List<GridTrack> tracks = new ArrayList<>();
    for (double mm : COLUMNS) {
      tracks.add(new GridTrack.Share(mm));
    }
    List<Double> across =
        FlatSheet.exactEnd(GridLines.lay(tracks, inside.left(), inside.width()), inside.right());
    double top = inside.top();
    List<Double> down =
        GridLines.lay(
            List.of(new GridTrack.Fixed(ROW), new GridTrack.Fixed(ROW)), top, inside.height());
    Map<HeaderSpot, Rect> boxes = new LinkedHashMap<>();
    HeaderSpot.ALL.stream()
        .sorted(Comparator.comparingInt(s -> COLUMNS.length * area(s)[1] + area(s)[0]))
        .forEach(
            s -> {
              int[] a = area(s);
              boxes.put(
                  s, new Rect(across.get(a[0]), down.get(a[1]), across.get(a[2]), down.get(a[3])));
            });
    return new HeaderLayout(across, boxes, down.get(2));
  }

  private static int[] area(HeaderSpot spot) {
    return Objects.requireNonNull(AREAS.get(spot.title()));
  }
}
