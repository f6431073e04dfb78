package dev.placket.layout.check;

import dev.placket.layout.flat.ScaleGroup;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The scales of a group keep their ratios exactly. */
final class GroupRule {
  private GroupRule() {}

  static void check(List<Placed> placed, Breaches breaches) {
    Map<String, Placed> first = new HashMap<>();
    for (Placed p : placed) {
      ScaleGroup group = p.flat().group();
      if (group == null) {
        continue;
      }
      Placed lead = first.putIfAbsent(group.name(), p);
      if (lead != null) {
        BigDecimal its = p.scale().multiply(Placed.ratio(lead.flat()));
        BigDecimal due = lead.scale().multiply(Placed.ratio(p.flat()));
        if (its.compareTo(due) != 0) {
          breaches.add(
              "scale group",
              String.join(
                  " ",
                  "in group",
                  group.name(),
                  p.id(),
                  "at scale",
                  p.scale().toString(),
                  "is out of ratio with",
                  lead.id(),
                  "at",
                  lead.scale().toString()));
        }
      }
    }
  }

  static boolean inOne(Placed a, Placed b) {
    ScaleGroup its = a.flat().group();
    ScaleGroup other = b.flat().group();
    return its != null && other != null && its.name().equals(other.name());
  }
}
