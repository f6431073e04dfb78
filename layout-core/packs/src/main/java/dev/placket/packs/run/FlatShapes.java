package dev.placket.packs.run;

import dev.placket.layout.flat.FlatShape;
import dev.placket.layout.units.Length;
import dev.placket.packs.callouts.CalloutPlan;
import dev.placket.packs.dimensions.DimensionPlan;
import dev.placket.packs.flats.FlatSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The footprints that flats offer for the labels of their callouts and the lanes of their measures.
 *
 * @param items the flats of a sheet
 * @param from the first of each flat's options for lanes; the first of all where none is named
 */
record FlatShapes(List<FlatSet.Item> items, Map<String, Integer> from) {
  /** About so many choices of footprints are tried on a sheet, each with a search of its own. */
  private static final int CHOICES = 36;

  /** All that flats offer. */
  static FlatShapes of(List<FlatSet.Item> items) {
    return new FlatShapes(items, Map.of());
  }

  /** For a scale that is not known yet: the lanes that do at every size. */
  static FlatShapes atAnySize(List<FlatSet.Item> items) {
    Map<String, Integer> from = new TreeMap<>();
    for (FlatSet.Item item : items) {
      List<DimensionPlan.Option> options = item.spots().dimensions().options();
      int first = 0;
      while (options.get(first).least().pt() > 0) {
        first++;
      }
      from.put(item.flat().id(), first);
    }
    return new FlatShapes(items, from);
  }

  /**
   * The footprints of those flats that have callouts or measures, by their identifiers: those that
   * suit the flat's maximum size, fewer of each on a sheet with many such flats. A list may be
   * empty.
   *
   * @param lanes whether lanes for leaders are as wide as inclined ones ask for
   */
  Map<String, List<FlatShape>> all(boolean lanes) {
    Map<String, List<FlatShape>> shapes = new TreeMap<>();
    for (FlatSet.Item item : items) {
      List<FlatShape> its = its(item, lanes);
      boolean plain = item.spots().plan() == null && item.spots().dimensions().lines().isEmpty();
      if (!plain) {
        shapes.put(item.flat().id(), its);
      }
    }
    int each = 1;
    while (Math.pow(each + 1, shapes.size()) <= CHOICES && each < CHOICES) {
      each++;
    }
    int most = each;
    shapes.replaceAll((id, all) -> all.subList(0, Math.min(most, all.size())));
    return shapes;
  }

  private List<FlatShape> its(FlatSet.Item item, boolean lanes) {
    CalloutPlan plan = item.spots().plan();
    DimensionPlan measures = item.spots().dimensions();
    List<FlatShape> bare =
        plan == null
            ? List.of(new FlatShape(item.flat().surround(), Length.ZERO))
            : plan.shapes(lanes);
    List<FlatShape> all = new ArrayList<>();
    for (FlatShape shape : bare) {
      all.addAll(measures.around(shape, from.getOrDefault(item.flat().id(), 0)));
    }
    return all.stream().filter(s -> s.suits(item.flat())).toList();
  }
}
