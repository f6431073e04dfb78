package dev.placket.layout.fit;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/** A rule of how flats stand to one another; a request has a set of those in force. */
public enum LeadRule {
  /** In the front's scale group no scale is above its own; outside it no longest side is. */
  FRONT_LARGEST("front largest"),
  /** A detail's longest side is under that of every view on its sheet. */
  DETAILS_UNDER_VIEWS("details under views"),
  /** The front is left of the back or above it, apart by the gap on that axis. */
  FRONT_BEFORE_BACK("front before back"),
  /**
   * Flats of a list, swatches, and steps, are read in the order given; see {@link
   * ReadingOrder#isListed}.
   */
  LISTED_IN_ORDER("listed in order");

  /** All in force: how a spec pack is read. */
  public static final Set<LeadRule> ALL =
      Collections.unmodifiableSet(EnumSet.allOf(LeadRule.class));

  /** None in force: plain pictures. */
  public static final Set<LeadRule> NONE =
      Collections.unmodifiableSet(EnumSet.noneOf(LeadRule.class));

  private final String words;

  LeadRule(String words) {
    this.words = words;
  }

  /** The rule in words, as in {@code front largest}. */
  public String words() {
    return words;
  }

  /** The rules without this one. */
  public Set<LeadRule> takenFrom(Set<LeadRule> rules) {
    EnumSet<LeadRule> rest = EnumSet.noneOf(LeadRule.class);
    rest.addAll(rules);
    rest.remove(this);
    return Collections.unmodifiableSet(rest);
  }
}
