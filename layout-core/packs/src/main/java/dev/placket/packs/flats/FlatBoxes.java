package dev.placket.packs.flats;

import dev.placket.layout.flat.Flat;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One flat for each ruled box: of several flats that may use the same boxes, the first takes the
 * first box.
 *
 * <p>Boxes are two or more windows in the order in which they were named. Boxes without a flat stay
 * empty. More flats than boxes share all of them.
 */
public final class FlatBoxes {
  private FlatBoxes() {}

  /**
   * The window of each flat by its identifier, for flats that have a box of their own.
   *
   * @param windows the windows that each flat may use, by its identifier, in the order of the flats
   */
  public static Map<String, List<String>> of(Map<String, List<String>> windows) {
    Map<List<String>, List<String>> sharing = new LinkedHashMap<>();
    windows.forEach((id, its) -> sharing.computeIfAbsent(its, k -> new ArrayList<>()).add(id));
    Map<String, List<String>> own = new LinkedHashMap<>();
    sharing.forEach(
        (boxes, ids) -> {
          if (ids.size() > 1 && ids.size() <= boxes.size()) {
            for (int i = 0; i < ids.size(); i++) {
              own.put(ids.get(i), List.of(boxes.get(i)));
            }
          }
        });
    return own;
  }

  /**
   * The flats with their own boxes.
   *
   * @param flats flats in order
   * @param boxes the boxes that flats without windows may use, in order
   */
  public static List<Flat> in(List<Flat> flats, List<String> boxes) {
    Map<String, List<String>> windows = new LinkedHashMap<>();
    flats.forEach(f -> windows.put(f.id(), f.windows().isEmpty() ? boxes : f.windows()));
    Map<String, List<String>> own = of(windows);
    return flats.stream().map(f -> f.withWindows(own.getOrDefault(f.id(), f.windows()))).toList();
  }
}
