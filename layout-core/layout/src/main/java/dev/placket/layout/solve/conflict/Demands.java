package dev.placket.layout.solve.conflict;

import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.Requirement;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Held;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.units.Length;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The named demands of a request, and the request as it would be if only some of them stood. */
public final class Demands {
  private Demands() {}

  /**
   * Every demand of the request, the more preferred first: what keeps a sheet legible before what
   * is nice to have.
   */
  static List<Requirement> of(FitRequest request) {
    List<Requirement> all = new ArrayList<>();
    if (request.spacing().clearance().pt() > 0 || !request.spacing().roles().isEmpty()) {
      all.add(new Requirement(Requirement.Kind.CLEARANCE, List.of()));
    }
    if (request.spacing().gap().pt() > 0 || !request.spacing().pairs().isEmpty()) {
      all.add(new Requirement(Requirement.Kind.GAP, List.of()));
    }
    for (Flat f : request.flats()) {
      all.add(new Requirement(Requirement.Kind.LEAST_SIZE, List.of(f.id())));
    }
    addRules(request.rules(), all);
    for (Flat f : request.flats()) {
      if (f.held().any()) {
        all.add(new Requirement(Requirement.Kind.HELD, List.of(f.id())));
      }
    }
    return all;
  }

  private static void addRules(Set<LeadRule> rules, List<Requirement> all) {
    if (rules.contains(LeadRule.FRONT_BEFORE_BACK)) {
      all.add(new Requirement(Requirement.Kind.FRONT_BEFORE_BACK, List.of()));
    }
    if (rules.contains(LeadRule.FRONT_LARGEST)) {
      all.add(new Requirement(Requirement.Kind.FRONT_LARGEST, List.of()));
    }
    if (rules.contains(LeadRule.DETAILS_UNDER_VIEWS)) {
      all.add(new Requirement(Requirement.Kind.DETAILS_UNDER_VIEWS, List.of()));
    }
    if (rules.contains(LeadRule.LISTED_IN_ORDER)) {
      all.add(new Requirement(Requirement.Kind.LISTED_IN_ORDER, List.of()));
    }
  }

  /** Whether no flat is left under these demands, so that they hold trivially. */
  public static boolean empty(List<Requirement> kept) {
    return kept.stream().noneMatch(r -> r.kind() == Requirement.Kind.LEAST_SIZE);
  }

  /** The request under these demands alone: a flat whose least size is not demanded is left out. */
  public static FitRequest only(FitRequest request, List<Requirement> kept) {
    List<Flat> flats = new ArrayList<>();
    for (Flat f : request.flats()) {
      if (has(kept, Requirement.Kind.LEAST_SIZE, f.id())) {
        flats.add(has(kept, Requirement.Kind.HELD, f.id()) ? f : f.withHeld(Held.NOTHING));
      }
    }
    Set<LeadRule> rules = EnumSet.noneOf(LeadRule.class);
    for (LeadRule rule : LeadRule.values()) {
      if (has(kept, Requirement.Kind.valueOf(rule.name()))) {
        rules.add(rule);
      }
    }
    return new FitRequest(
        request.sheet(),
        flats,
        spacing(request.spacing(), kept),
        rules,
        Order.NONE,
        false,
        request.budget());
  }

  private static Spacing spacing(Spacing all, List<Requirement> kept) {
    boolean gap = has(kept, Requirement.Kind.GAP);
    boolean clearance = has(kept, Requirement.Kind.CLEARANCE);
    return Spacing.NONE
        .withGap(gap ? all.gap() : Length.ZERO)
        .withClearance(clearance ? all.clearance() : Length.ZERO)
        .withPairs(gap ? all.pairs() : List.of())
        .withRoles(clearance ? all.roles() : List.of());
  }

  private static boolean has(List<Requirement> kept, Requirement.Kind kind) {
    return kept.stream().anyMatch(r -> r.kind() == kind);
  }

  private static boolean has(List<Requirement> kept, Requirement.Kind kind, String flat) {
    return kept.stream().anyMatch(r -> r.kind() == kind && r.of().contains(flat));
  }
}
