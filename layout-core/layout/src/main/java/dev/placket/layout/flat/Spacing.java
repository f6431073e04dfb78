package dev.placket.layout.flat;

import dev.placket.layout.units.Length;
import java.util.List;

/**
 * How far footprints keep from one another and from labelled cells, measured on x or on y.
 *
 * <p>Distances are weights of the relations between pairs, not one inflation, so any pair of roles
 * may have its own.
 *
 * @param gap between two footprints, where no pair says otherwise; not negative
 * @param clearance from a footprint to a labelled cell or the ink of a rule, where no role says
 *     otherwise; not negative
 * @param pairs gaps between two roles; the first that matches holds
 * @param roles clearances of single roles; the first that matches holds
 */
public record Spacing(
    Length gap, Length clearance, List<PairGap> pairs, List<RoleClearance> roles) {
  /**
   * A gap between two roles, in either order.
   *
   * @param one a role
   * @param other a role, possibly the same
   * @param gap not negative
   */
  public record PairGap(Role one, Role other, Length gap) {}

  /**
   * A clearance of one role.
   *
   * @param role the role
   * @param clearance not negative
   */
  public record RoleClearance(Role role, Length clearance) {}

  /**
   * Copies the lists and checks the signs.
   *
   * @throws IllegalArgumentException if a distance is negative
   */
  public Spacing {
    pairs = List.copyOf(pairs);
    roles = List.copyOf(roles);
    double least = Math.min(gap.pt(), clearance.pt());
    for (PairGap p : pairs) {
      least = Math.min(least, p.gap().pt());
    }
    for (RoleClearance r : roles) {
      least = Math.min(least, r.clearance().pt());
    }
    if (least < 0) {
      throw new IllegalArgumentException("a gap or clearance is negative: " + least + " pt");
    }
  }

  /** One gap and one clearance for all. */
  public static Spacing of(Length gap, Length clearance) {
    return new Spacing(gap, clearance, List.of(), List.of());
  }

  /** The gap between two flats of these roles. */
  public Length gap(Role a, Role b) {
    for (PairGap p : pairs) {
      if ((p.one() == a && p.other() == b) || (p.one() == b && p.other() == a)) {
        return p.gap();
      }
    }
    return gap;
  }

  /** The clearance of a flat of this role. */
  public Length clearance(Role role) {
    for (RoleClearance r : roles) {
      if (r.role() == role) {
        return r.clearance();
      }
    }
    return clearance;
  }
}
