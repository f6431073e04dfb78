package dev.placket.layout.fit;

import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.sheet.Sheet;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * One sheet with the flats to be placed on it: a value that any engine can carry.
 *
 * @param sheet the ruled page
 * @param flats one or more; their order is the order in which details are read
 * @param spacing gap and clearance
 * @param rules those of the rules that let the front lead which are in force
 * @param order what may be given up for an ordered look
 * @param growth whether flats are enlarged into room that is left, views to 1.3 times: first those
 *     of one kind together, see {@link SizeLevel}, then each by itself
 * @param budget how long the search may go on
 */
public record FitRequest(
    Sheet sheet,
    List<Flat> flats,
    Spacing spacing,
    Set<LeadRule> rules,
    Order order,
    boolean growth,
    Budget budget) {
  /**
   * Copies the flats and checks them against the sheet.
   *
   * @throws IllegalArgumentException if there is no flat, two share an id, or one names a window
   *     the sheet lacks
   */
  public FitRequest {
    flats = List.copyOf(flats);
    EnumSet<LeadRule> inForce = EnumSet.noneOf(LeadRule.class);
    inForce.addAll(rules);
    rules = Collections.unmodifiableSet(inForce);
    if (flats.isEmpty()) {
      throw new IllegalArgumentException("nothing to place on sheet " + sheet.name());
    }
    Set<String> seen = new HashSet<>();
    for (Flat f : flats) {
      if (!seen.add(f.id())) {
        throw new IllegalArgumentException("two flats are called '" + f.id() + "'");
      }
      f.windows().forEach(sheet::window);
    }
  }

  /**
   * A request with all rules, the default order, growth and the default budget.
   *
   * <p>{@code withOrder(Order.NONE).withGrowth(false)} asks for the largest common scale alone.
   */
  public static FitRequest of(Sheet sheet, List<Flat> flats, Spacing spacing) {
    return new FitRequest(sheet, flats, spacing, LeadRule.ALL, Order.DEFAULT, true, Budget.DEFAULT);
  }

  /** This request under other rules. */
  public FitRequest withRules(Set<LeadRule> r) {
    return new FitRequest(sheet, flats, spacing, r, order, growth, budget);
  }

  /** This request with another order. */
  public FitRequest withOrder(Order o) {
    return new FitRequest(sheet, flats, spacing, rules, o, growth, budget);
  }

  /** This request with another budget. */
  public FitRequest withBudget(Budget b) {
    return new FitRequest(sheet, flats, spacing, rules, order, growth, b);
  }

  /** This request with or without growth. */
  public FitRequest withGrowth(boolean g) {
    return new FitRequest(sheet, flats, spacing, rules, order, g, budget);
  }

  /** This request on another sheet. */
  public FitRequest withSheet(Sheet s) {
    return new FitRequest(s, flats, spacing, rules, order, growth, budget);
  }

  /** This request for other flats. */
  public FitRequest withFlats(List<Flat> f) {
    return new FitRequest(sheet, f, spacing, rules, order, growth, budget);
  }
}
