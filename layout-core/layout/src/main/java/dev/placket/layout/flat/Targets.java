package dev.placket.layout.flat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The scale of every flat at common scale 1, from scale groups and shares.
 *
 * <p>The common scale is the scale of the leading flat, in points per drawing unit: the first
 * front, without one the first view, without one the first flat. A flat without a group aims at a
 * share of the leading flat's longest side. Without a view no flat leads: two flats aim at longest
 * sides in the ratio of their shares, so flats of one role aim at one longest side. A group that
 * lacks the leading flat takes its common scale from the share of its first member.
 */
public final class Targets {
  private Targets() {}

  /**
   * The scales at common scale 1, in the order of the flats; all above zero. O(n).
   *
   * @param flats one or more
   */
  public static double[] scales(List<Flat> flats) {
    Flat lead = lead(flats);
    Map<String, Double> common = new HashMap<>();
    if (lead.group() != null) {
      common.put(lead.group().name(), 1 / lead.group().ratio());
    }
    double[] scales = new double[flats.size()];
    for (int i = 0; i < scales.length; i++) {
      scales[i] = scale(flats.get(i), lead, common);
    }
    return scales;
  }

  /**
   * The flat whose scale is the common scale: the first front, else the first view, else the first
   * of all.
   */
  public static Flat lead(List<Flat> flats) {
    for (Flat f : flats) {
      if (f.role() == Role.FRONT) {
        return f;
      }
    }
    return flats.stream().filter(f -> f.role().isView()).findFirst().orElseGet(() -> flats.get(0));
  }

  private static double scale(Flat flat, Flat lead, Map<String, Double> common) {
    if (flat == lead) {
      return 1;
    }
    double share = lead.role().isView() ? flat.share() : flat.share() / lead.share();
    double byShare = share * lead.ink().longestSide() / flat.ink().longestSide();
    ScaleGroup g = flat.group();
    if (g == null) {
      return byShare;
    }
    return g.ratio() * common.computeIfAbsent(g.name(), n -> byShare / g.ratio());
  }
}
