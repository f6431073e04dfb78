package dev.placket.packs.description;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * Flats that stand on several sheets under one identifier: what a later sheet does not state is as
 * the first one has it.
 *
 * <p>Where it lies, how large it may be and what is pointed at belong to each sheet alone. The flat
 * of a later sheet goes by its identifier and that of the sheet, as in {@code front-measurements}.
 */
final class FlatAgain {
  private static final Set<String> OF_ITS_SHEET =
      Set.of(
          "window",
          "least",
          "greatest",
          "held",
          "share",
          "points",
          "callouts",
          "dimensions",
          "colourways");

  private final Map<String, PackNode.Keys> first = new LinkedHashMap<>();
  private final Map<String, String> paths = new LinkedHashMap<>();

  /** Whether a flat is that of an earlier sheet: it states neither file nor role. */
  boolean is(String id, PackNode node) {
    return first.containsKey(id)
        && node instanceof PackNode.Keys keys
        && !keys.values().containsKey("file")
        && !keys.values().containsKey("role");
  }

  /** The keys of a flat with those of the first sheet that it does not state. */
  PackNode whole(String id, PackNode node) {
    PackNode.Keys earlier = first.get(id);
    if (earlier == null || !is(id, node) || !(node instanceof PackNode.Keys own)) {
      return node;
    }
    Map<String, PackNode> values = new LinkedHashMap<>(earlier.values());
    values.keySet().removeAll(OF_ITS_SHEET);
    values.putAll(own.values());
    Map<String, TextPosition> places = new LinkedHashMap<>(own.places());
    return new PackNode.Keys(own.mark(), values, places);
  }

  /** Keeps the flats of a sheet for later ones. */
  void keep(PackNode flats) {
    if (flats instanceof PackNode.Keys keys) {
      keys.values()
          .forEach(
              (id, node) -> {
                if (node instanceof PackNode.Keys flat && flat.values().containsKey("file")) {
                  first.putIfAbsent(id, flat);
                }
              });
    }
  }

  /**
   * The identifier of a flat on a later sheet.
   *
   * @param sheet the sheet
   */
  String named(String id, String sheet) {
    String at = "sheets/" + sheet + "/flats/";
    paths.put(at + id + "-" + sheet, at + id);
    return id + "-" + sheet;
  }

  /** Places where messages find flats of later sheets. */
  Places in(Places places) {
    Places all = places;
    for (Map.Entry<String, String> each : paths.entrySet()) {
      all = all.also(each.getKey(), each.getValue());
    }
    return all;
  }
}
