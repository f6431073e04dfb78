package dev.placket.layout.flat;

import dev.placket.layout.units.Length;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * How far footprints keep from one another and from labelled cells, measured on x or on y.
 *
 * <p>Distances are weights of the relations between pairs, not one inflation, so any pair of roles
 * may have its own. Start with {@link #NONE} and state each distance by its name:
 *
 * <pre>{@code
 * Spacing.NONE.withGap(Length.mm(5)).withClearance(Length.mm(3))
 * }</pre>
 */
public final class Spacing {
  /** Footprints may touch one another and labelled cells. */
  public static final Spacing NONE = new Spacing(Length.ZERO, Length.ZERO, List.of(), List.of());

  private final Length gap;
  private final Length clearance;
  private final List<PairGap> pairs;
  private final List<RoleClearance> roles;

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

  private Spacing(Length gap, Length clearance, List<PairGap> pairs, List<RoleClearance> roles) {
    this.gap = gap;
    this.clearance = clearance;
    this.pairs = List.copyOf(pairs);
    this.roles = List.copyOf(roles);
    Stream.of(
            Stream.of(gap, clearance),
            this.pairs.stream().map(PairGap::gap),
            this.roles.stream().map(RoleClearance::clearance))
        .flatMap(s -> s)
        .forEach(Spacing::check);
  }

  private static void check(Length distance) {
    if (distance.pt() < 0) {
      throw new IllegalArgumentException(
          "a gap or clearance is negative: " + distance.pt() + " pt");
    }
  }

  /**
   * This spacing with another gap between two footprints, where no pair of roles says otherwise.
   *
   * @throws IllegalArgumentException if it is negative
   */
  public Spacing withGap(Length distance) {
    return new Spacing(distance, clearance, pairs, roles);
  }

  /**
   * This spacing with another clearance from a footprint to a labelled cell or the ink of a rule,
   * where no role says otherwise.
   *
   * @throws IllegalArgumentException if it is negative
   */
  public Spacing withClearance(Length distance) {
    return new Spacing(gap, distance, pairs, roles);
  }

  /**
   * This spacing with other gaps between two roles; the first that matches a pair applies.
   *
   * @throws IllegalArgumentException if one is negative
   */
  public Spacing withPairs(List<PairGap> gaps) {
    return new Spacing(gap, clearance, gaps, roles);
  }

  /**
   * This spacing with other clearances of single roles; the first that matches a role applies.
   *
   * @throws IllegalArgumentException if one is negative
   */
  public Spacing withRoles(List<RoleClearance> clearances) {
    return new Spacing(gap, clearance, pairs, clearances);
  }

  /** The gap between two footprints, where no pair of roles says otherwise. */
  public Length gap() {
    return gap;
  }

  /** The clearance from a footprint to a labelled cell, where no role says otherwise. */
  public Length clearance() {
    return clearance;
  }

  /** Gaps between two roles. */
  public List<PairGap> pairs() {
    return pairs;
  }

  /** Clearances of single roles. */
  public List<RoleClearance> roles() {
    return roles;
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

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Spacing that
        && gap.equals(that.gap)
        && clearance.equals(that.clearance)
        && pairs.equals(that.pairs)
        && roles.equals(that.roles);
  }

  @Override
  public int hashCode() {
    return Objects.hash(gap, clearance, pairs, roles);
  }

  @Override
  public String toString() {
    return "Spacing[gap=" + gap + ", clearance=" + clearance + ", " + pairs + ", " + roles + "]";
  }
}
