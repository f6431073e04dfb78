package dev.placket.layout.solve;

import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.ScaleGroup;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A group with a flat held at a scale is held as a whole, also where that flat is elsewhere. */
final class HeldGroups {
  private HeldGroups() {}

  /** The same flats, each held at the scale that its group is held at. */
  static List<Flat> of(List<Flat> flats) {
    Map<String, Double> common = new HashMap<>();
    for (Flat f : flats) {
      Double scale = f.held().scale();
      ScaleGroup group = f.group();
      if (scale != null && group != null) {
        common.putIfAbsent(group.name(), scale / group.ratio());
      }
    }
    return flats.stream().map(f -> held(f, common)).toList();
  }

  private static Flat held(Flat flat, Map<String, Double> common) {
    ScaleGroup group = flat.group();
    if (group == null || flat.held().scale() != null) {
      return flat;
    }
    Double scale = common.get(group.name());
    return scale == null ? flat : flat.withHeld(flat.held().atScale(scale * group.ratio()));
  }
}
