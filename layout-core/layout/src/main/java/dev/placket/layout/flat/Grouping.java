package dev.placket.layout.flat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Which views of one folder share a scale by default: those whose drawn heights agree with the
 * leading view's within a tenth, drawn in the same unit.
 *
 * <p>The tenth is common practice: a drop tail makes a back that much longer than its front.
 */
public final class Grouping {
  /** The name of the group that is formed. */
  public static final String VIEWS = "views";

  private static final double AGREE = 1.10;

  private Grouping() {}

  /**
   * A flat as the rule sees it.
   *
   * @param id the flat
   * @param role its role; only views are grouped
   * @param height its drawn height, in its own units, above zero
   * @param unit what names its unit: equal names can be compared; null where the unit is unknown
   */
  public record Candidate(String id, Role role, double height, @Nullable String unit) {}

  /**
   * The ratio of each grouped flat to the group's common scale, in the order given; empty where
   * fewer than two agree. The front's ratio is 1, any other's its role's share. O(n).
   *
   * @param candidates the flats of one sheet
   */
  public static Map<String, Double> views(List<Candidate> candidates) {
    Candidate lead = lead(candidates);
    Map<String, Double> ratios = new LinkedHashMap<>();
    if (lead == null) {
      return ratios;
    }
    for (Candidate c : candidates) {
      boolean sameUnit = c.unit() != null && c.unit().equals(lead.unit());
      double longer = Math.max(c.height(), lead.height()) / Math.min(c.height(), lead.height());
      if (c.role().isView() && sameUnit && longer <= AGREE) {
        ratios.put(c.id(), c.role().share());
      }
    }
    if (ratios.size() < 2) {
      ratios.clear();
    }
    return ratios;
  }

  private static @Nullable Candidate lead(List<Candidate> candidates) {
    Candidate first = null;
    for (Candidate c : candidates) {
      if (c.role() == Role.FRONT) {
        return c;
      }
      if (first == null && c.role().isView()) {
        first = c;
      }
    }
    return first;
  }
}
