package dev.placket.layout.solve;

import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Targets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Keeps the targets of flats as they are on one sheet when some of them stand on another. */
final class FlowTargets {
  private final Map<String, Double> atOne = new HashMap<>();
  private final Map<String, Double> groups = new HashMap<>();

  FlowTargets(List<Flat> all) {
    double[] scales = Targets.scales(all);
    for (int i = 0; i < scales.length; i++) {
      Flat f = all.get(i);
      atOne.put(f.id(), scales[i]);
      var group = f.group();
      if (group != null) {
        groups.putIfAbsent(group.name(), scales[i] / group.ratio());
      }
    }
  }

  /** What common scale 1 of all flats comes to for the leading one of these. */
  double atOne(List<Flat> some) {
    return scale(Targets.lead(some));
  }

  /** The common scale of a group where that of all flats is {@code common}. */
  double groupScale(String group, double common) {
    return groups.getOrDefault(group, 1.0) * common;
  }

  /** The same flats with shares that mean among themselves what theirs meant among all. */
  List<Flat> keep(List<Flat> some) {
    Flat lead = Targets.lead(some);
    double length = scale(lead) * lead.ink().longestSide();
    return some.stream().map(f -> f.withShare(scale(f) * f.ink().longestSide() / length)).toList();
  }

  private double scale(Flat f) {
    return atOne.getOrDefault(f.id(), 1.0);
  }
}
