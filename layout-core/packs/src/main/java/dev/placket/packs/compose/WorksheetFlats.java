package dev.placket.packs.compose;

import dev.placket.packs.description.PackFlat;
import dev.placket.packs.description.PackLeaders;
import dev.placket.packs.description.PackWorksheet;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.flats.ScaleLine;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The flats of a worksheet, which has no captions of ours, no tables and no rows. */
final class WorksheetFlats {
  private WorksheetFlats() {}

  static FlatSet of(String id, PackWorksheet worksheet, FlatSetter setter, PackText text) {
    Map<String, PackFlat> flats = worksheet.flats();
    List<FlatSetter.Read> read = setter.read("workbook/worksheets/" + id, flats);
    Map<String, Double> grouped = SheetFlats.grouped(read);
    Map<String, ScaleLine> scales = setter.scales(read, grouped, text);
    boolean even = read.stream().noneMatch(r -> r.flat().role().isView());
    List<FlatSet.Item> items = new ArrayList<>();
    Map<String, Double> ratios = new LinkedHashMap<>();
    for (FlatSetter.Read r : read) {
      FlatSet.Item item =
          setter.item(
              r,
              r.flat().windows(),
              false,
              grouped.get(r.id()),
              even,
              scales.get(r.id()),
              PackLeaders.NONE,
              r.flat().trueSize(),
              text);
      if (item != null) {
        items.add(item);
        if (item.flat().group() != null) {
          ratios.put(r.id(), item.flat().group().ratio());
        }
      }
    }
    return new FlatSet(
        FlatSet.besideFront(items, f -> Objects.requireNonNull(flats.get(f)).least() == null),
        ratios);
  }
}
