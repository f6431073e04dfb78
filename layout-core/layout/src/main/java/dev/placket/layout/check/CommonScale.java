package dev.placket.layout.check;

import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Limits;
import dev.placket.layout.flat.Role;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Every size is its target at the common scale, clamped by its limits, and is said to be capped
 * where its greatest size holds it down.
 *
 * <p>A scale may differ from that by one unit in its twelfth digit, since scales are rounded. What
 * is as long as the front may lack what one unit of the front's scale makes of its length, too.
 * Growth may raise it, a view's by no more than to 1.3 times. A set with a held scale follows that
 * instead.
 */
final class CommonScale {
  private static final BigDecimal UNIT_AND_NOISE = new BigDecimal("1.01");
  private static final BigDecimal VIEW_GROWTH = new BigDecimal("1.3");

  private final FitRequest request;
  private final BigDecimal scale;
  private final List<Placed> placed;
  private final Breaches breaches;

  private CommonScale(
      FitRequest request, BigDecimal scale, List<Placed> placed, Breaches breaches) {
    this.request = request;
    this.scale = scale;
    this.placed = placed;
    this.breaches = breaches;
  }

  static void check(FitRequest request, BigDecimal scale, List<Placed> placed, Breaches breaches) {
    CommonScale rule = new CommonScale(request, scale, placed, breaches);
    Aims.of(request.flats()).forEach(rule::check);
  }

  private void check(Aims.Set set) {
    if (set.members().stream().anyMatch(f -> f.held().scale() != null)) {
      return;
    }
    Quotient aim = set.atOne().times(scale);
    Quotient least = least(set);
    Quotient greatest = greatest(set);
    Quotient due = Quotient.larger(aim, least);
    due = greatest == null ? due : Quotient.smaller(due, greatest);
    Quotient most = request.growth() ? grown(set, due, greatest) : due;
    for (Placed p : placed) {
      if (set.holds(p.id())) {
        checkScale(p, due, most);
        checkCapped(p, aim, greatest);
      }
    }
  }

  private static Quotient least(Aims.Set set) {
    Quotient least = Quotient.of(BigDecimal.ZERO);
    for (Flat f : set.members()) {
      least = Quotient.larger(least, inSet(f, Exact.of(f.limits().least())));
    }
    return least;
  }

  private static @Nullable Quotient greatest(Aims.Set set) {
    Quotient greatest = null;
    for (Flat f : set.members()) {
      Quotient its = greatest(f);
      if (its != null) {
        greatest = greatest == null ? its : Quotient.smaller(greatest, its);
      }
    }
    return greatest;
  }

  private static @Nullable Quotient greatest(Flat f) {
    Limits limits = f.limits();
    return limits.greatest() == null ? null : inSet(f, Exact.of(limits.greatest()));
  }

  /** The common scale of the set at which this flat's longest side has that many points. */
  private static Quotient inSet(Flat f, BigDecimal size) {
    return Quotient.of(size).per(Placed.longestSide(f)).per(Placed.ratio(f));
  }

  /** The most that growth may make of it; null where only the neighbours stop it. */
  private static @Nullable Quotient grown(Aims.Set set, Quotient due, @Nullable Quotient greatest) {
    if (set.members().stream().noneMatch(f -> f.role().isView())) {
      return greatest;
    }
    Quotient most = due.times(VIEW_GROWTH);
    return greatest == null ? most : Quotient.smaller(most, greatest);
  }

  private void checkScale(Placed p, Quotient due, @Nullable Quotient most) {
    BigDecimal ratio = Placed.ratio(p.flat());
    BigDecimal unit = Exact.unitInTwelfth(due.shown()).multiply(UNIT_AND_NOISE).multiply(ratio);
    Quotient above = Quotient.of(p.scale().add(unit)).plus(lostWithFront(p, unit));
    Quotient below = Quotient.of(p.scale().subtract(unit));
    boolean low = above.compareTo(due.times(ratio)) < 0;
    boolean high = most != null && below.compareTo(most.times(ratio)) > 0;
    if (low || high) {
      breaches.add(
          "common scale",
          p.id()
              + " has scale "
              + p.scale()
              + " where the common scale "
              + scale
              + " asks for "
              + due.times(ratio).shown());
    }
  }

  /** What the rounding of the front's scale may take from a flat that is as long as the front. */
  private Quotient lostWithFront(Placed p, BigDecimal unit) {
    Placed front = front();
    if (front == null || GroupRule.inOne(front, p)) {
      return Quotient.of(BigDecimal.ZERO);
    }
    BigDecimal longest = Placed.longestSide(p.flat());
    BigDecimal lacking = front.ink().longestSide().subtract(p.ink().longestSide());
    if (lacking.compareTo(unit.multiply(longest)) > 0) {
      return Quotient.of(BigDecimal.ZERO);
    }
    BigDecimal ratio = Placed.ratio(front.flat());
    BigDecimal its = Exact.unitInTwelfth(Quotient.of(front.scale()).per(ratio).shown());
    BigDecimal length = its.multiply(UNIT_AND_NOISE).multiply(ratio);
    return Quotient.of(length.multiply(Placed.longestSide(front.flat()))).per(longest);
  }

  /** The front that others must not be longer than; null without one, or without that rule. */
  private @Nullable Placed front() {
    return request.rules().contains(LeadRule.FRONT_LARGEST)
        ? placed.stream().filter(p -> p.role() == Role.FRONT).findFirst().orElse(null)
        : null;
  }

  /**
   * A flat is capped if its own greatest size is under its target; where only another member of its
   * set is capped, it may say either. At the very size of its target it may say either too.
   */
  private void checkCapped(Placed p, Quotient aim, @Nullable Quotient ofSet) {
    Quotient own = greatest(p.flat());
    BigDecimal unit = Exact.unitInTwelfth(aim.shown());
    boolean must = own != null && under(own, aim, unit.negate());
    boolean may = ofSet != null && under(ofSet, aim, unit);
    if (must && !p.at().capped()) {
      breaches.add("capped", p.id() + " is held under its target and does not say so");
    } else if (!may && p.at().capped()) {
      breaches.add("capped", p.id() + " says it is capped and is not");
    }
  }

  private static boolean under(Quotient greatest, Quotient aim, BigDecimal slack) {
    Quotient raised = new Quotient(aim.over().add(slack.multiply(aim.under())), aim.under());
    return greatest.compareTo(raised) < 0;
  }
}
