package dev.placket.layout.check;

import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Role;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;

/** The front leads: in size, over details, and in the order of reading; the first front counts. */
final class FrontRules {
  private final FitRequest request;
  private final List<Placed> placed;
  private final Breaches breaches;

  private FrontRules(FitRequest request, List<Placed> placed, Breaches breaches) {
    this.request = request;
    this.placed = placed;
    this.breaches = breaches;
  }

  static void check(FitRequest request, List<Placed> placed, Breaches breaches) {
    new FrontRules(request, placed, breaches).check();
  }

  private void check() {
    Set<LeadRule> rules = request.rules();
    String lead =
        request.flats().stream()
            .filter(f -> f.role() == Role.FRONT)
            .map(Flat::id)
            .findFirst()
            .orElse("");
    for (Placed front : placed) {
      if (front.role() == Role.FRONT && front.id().equals(lead)) {
        if (rules.contains(LeadRule.FRONT_LARGEST)) {
          checkLargest(front);
        }
        if (rules.contains(LeadRule.FRONT_BEFORE_BACK)) {
          checkBeforeBack(front);
        }
      }
    }
    if (rules.contains(LeadRule.DETAILS_UNDER_VIEWS)) {
      checkDetails();
    }
  }

  private void checkLargest(Placed front) {
    for (Placed p : placed) {
      if (GroupRule.inOne(front, p)) {
        if (Exact.above(p.scale(), front.scale())) {
          breaches.add(
              "front largest",
              p.id() + " at scale " + p.scale() + " is above the front's " + front.scale());
        }
      } else {
        BigDecimal over = p.ink().longestSide().subtract(front.ink().longestSide());
        if (over.signum() > 0) {
          breaches.add(
              "front largest", p.id() + " is " + Exact.pt(over) + " longer than " + front.id());
        }
      }
    }
  }

  private void checkDetails() {
    for (Placed detail : placed) {
      for (Placed view : placed) {
        if (detail.role() == Role.DETAIL && view.role().isView()) {
          BigDecimal over = detail.ink().longestSide().subtract(view.ink().longestSide());
          if (over.signum() >= 0) {
            breaches.add(
                "details under views",
                detail.id() + " is no shorter than " + view.id() + ": by " + Exact.pt(over));
          }
        }
      }
    }
  }

  private void checkBeforeBack(Placed front) {
    for (Placed back : placed) {
      if (back.role() == Role.BACK) {
        BigDecimal gap = Exact.of(request.spacing().gap(front.role(), back.role()));
        BigDecimal onX = back.footprint().left().subtract(front.footprint().right());
        BigDecimal onY = back.footprint().top().subtract(front.footprint().bottom());
        BigDecimal lacking = gap.subtract(onX.max(onY));
        if (lacking.signum() > 0) {
          breaches.add(
              "front before back",
              back.id()
                  + " lacks "
                  + Exact.pt(lacking)
                  + " to stand right of or under "
                  + front.id());
        }
      }
    }
  }
}
