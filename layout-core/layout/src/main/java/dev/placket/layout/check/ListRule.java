package dev.placket.layout.check;

import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.fit.ReadingOrder;
import java.util.List;

/** Flats of a list are read in its order: left of or above the later ones, none of them above. */
final class ListRule {
  private ListRule() {}

  static void check(FitRequest request, List<Placed> placed, Breaches breaches) {
    if (!request.rules().contains(LeadRule.LISTED_IN_ORDER)) {
      return;
    }
    for (int j = 1; j < placed.size(); j++) {
      for (int i = 0; i < j; i++) {
        Placed first = placed.get(i);
        Placed later = placed.get(j);
        if (ReadingOrder.isListed(first.flat(), later.flat())
            && !isBefore(first.footprint(), later.footprint())) {
          breaches.add("listed in order", later.id() + " does not stand after " + first.id());
        }
      }
    }
  }

  private static boolean isBefore(ExactRect a, ExactRect b) {
    if (a.bottom().compareTo(b.top()) <= 0) {
      return true;
    }
    return a.right().compareTo(b.left()) <= 0 && b.bottom().compareTo(a.top()) > 0;
  }
}
