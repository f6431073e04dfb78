package dev.placket.layout.solve.conflict;

import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.fit.Relief;
import dev.placket.layout.fit.Requirement;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Held;
import dev.placket.layout.flat.Limits;
import dev.placket.layout.flat.ScaleGroup;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** The changes that may cure a conflict: of its demands, and of the sheet. */
final class Cures {
  private final FitRequest request;
  private final List<Cure> all = new ArrayList<>();

  private Cures(FitRequest request) {
    this.request = request;
  }

  /**
   * Every cure worth trying.
   *
   * @param request the request that has no fit
   * @param core the demands in conflict
   */
  static List<Cure> of(FitRequest request, List<Requirement> core) {
    Cures cures = new Cures(request);
    core.forEach(cures::addFor);
    cures.all.addAll(SheetCures.of(request));
    return cures.all;
  }

  private void addFor(Requirement demand) {
    switch (demand.kind()) {
      case LEAST_SIZE -> addForFlat(flat(demand.of().get(0)));
      case HELD -> {
        Flat f = flat(demand.of().get(0));
        choice(Relief.Kind.LET_MOVE, f.id(), with(f, g -> g.withHeld(Held.NOTHING)));
      }
      case GAP -> spacing(Relief.Kind.LOWER_GAP, "gap");
      case CLEARANCE -> spacing(Relief.Kind.LOWER_CLEARANCE, "clearance");
      case FRONT_LARGEST -> turnOff(LeadRule.FRONT_LARGEST);
      case DETAILS_UNDER_VIEWS -> turnOff(LeadRule.DETAILS_UNDER_VIEWS);
      case FRONT_BEFORE_BACK -> turnOff(LeadRule.FRONT_BEFORE_BACK);
      case LISTED_IN_ORDER -> turnOff(LeadRule.LISTED_IN_ORDER);
      case WINDOW, SCALE_GROUP -> {}
    }
  }

  private Flat flat(String id) {
    return request.flats().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  private void addForFlat(Flat flat) {
    double least = flat.limits().least().pt();
    if (least > 0) {
      measured(
          Relief.Kind.LOWER_LEAST_SIZE,
          flat.id(),
          least,
          Relief.Unit.POINT,
          by -> with(flat, f -> f.withLimits(lower(f.limits(), by))));
    }
    ScaleGroup group = flat.group();
    if (group != null && request.flats().stream().filter(f -> inGroup(f, group)).count() > 1) {
      measured(
          Relief.Kind.CHANGE_RATIO,
          flat.id(),
          group.ratio(),
          Relief.Unit.RATIO,
          by -> with(flat, f -> f.withGroup(group.name(), group.ratio() + by)));
    }
    List<Flat> others = request.flats().stream().filter(f -> f != flat).toList();
    if (!others.isEmpty()) {
      FitRequest without = request.withFlats(others);
      all.add(new Cure(Relief.Kind.LEAVE_OUT, flat.id(), null, 1, Relief.Unit.FLAT, by -> without));
    }
  }

  private static boolean inGroup(Flat f, ScaleGroup group) {
    ScaleGroup its = f.group();
    return its != null && its.name().equals(group.name());
  }

  private static Limits lower(Limits limits, double by) {
    return new Limits(less(limits.least(), by), limits.greatest());
  }

  private static Length less(Length length, double by) {
    return Length.pt(Math.max(0, length.pt() - by));
  }

  private FitRequest with(Flat flat, UnaryOperator<Flat> change) {
    return request.withFlats(
        request.flats().stream().map(f -> f == flat ? change.apply(f) : f).toList());
  }

  private void spacing(Relief.Kind kind, String of) {
    Spacing s = request.spacing();
    boolean gaps = kind == Relief.Kind.LOWER_GAP;
    double most = gaps ? s.gap().pt() : s.clearance().pt();
    for (Spacing.PairGap p : s.pairs()) {
      most = gaps ? Math.max(most, p.gap().pt()) : most;
    }
    for (Spacing.RoleClearance r : s.roles()) {
      most = gaps ? most : Math.max(most, r.clearance().pt());
    }
    measured(
        kind, of, most, Relief.Unit.POINT, by -> spaced(gaps ? lessGap(by) : lessClearance(by)));
  }

  private Spacing lessGap(double by) {
    Spacing s = request.spacing();
    List<Spacing.PairGap> pairs =
        s.pairs().stream()
            .map(p -> new Spacing.PairGap(p.one(), p.other(), less(p.gap(), by)))
            .toList();
    return Spacing.NONE
        .withGap(less(s.gap(), by))
        .withClearance(s.clearance())
        .withPairs(pairs)
        .withRoles(s.roles());
  }

  private Spacing lessClearance(double by) {
    Spacing s = request.spacing();
    List<Spacing.RoleClearance> roles =
        s.roles().stream()
            .map(r -> new Spacing.RoleClearance(r.role(), less(r.clearance(), by)))
            .toList();
    return Spacing.NONE
        .withGap(s.gap())
        .withClearance(less(s.clearance(), by))
        .withPairs(s.pairs())
        .withRoles(roles);
  }

  private FitRequest spaced(Spacing spacing) {
    return new FitRequest(
        request.sheet(),
        request.flats(),
        spacing,
        request.rules(),
        request.order(),
        request.growth(),
        request.budget());
  }

  private void turnOff(LeadRule rule) {
    choice(Relief.Kind.TURN_OFF, rule.words(), request.withRules(rule.takenFrom(request.rules())));
  }

  private void choice(Relief.Kind kind, String of, FitRequest changed) {
    all.add(new Cure(kind, of, null, 1, Relief.Unit.CHOICE, by -> changed));
  }

  private void measured(
      Relief.Kind kind,
      String of,
      double most,
      Relief.Unit unit,
      java.util.function.DoubleFunction<FitRequest> by) {
    all.add(new Cure(kind, of, null, most, unit, by));
  }
}
