package dev.placket.layout.fit;

import java.util.List;

/**
 * One named demand of a request that takes part in a conflict.
 *
 * @param kind what is demanded
 * @param of the flats, windows or cells it is demanded of
 */
public record Requirement(Kind kind, List<String> of) {
  /** The kinds of demands. */
  public enum Kind {
    /** A flat keeps its least printed size. */
    LEAST_SIZE,
    /** A flat stays in its windows. */
    WINDOW,
    /** Footprints keep their gap. */
    GAP,
    /** Footprints keep clear of a labelled cell or rule. */
    CLEARANCE,
    /** Scales of a group keep their ratio. */
    SCALE_GROUP,
    /** The front leads in size. */
    FRONT_LARGEST,
    /** Details stay under views. */
    DETAILS_UNDER_VIEWS,
    /** The front stands before the back. */
    FRONT_BEFORE_BACK,
    /** Flats of a list, swatches and steps stand in the order given. */
    LISTED_IN_ORDER,
    /** Part of a placement is held. */
    HELD
  }

  /** Copies the list. */
  public Requirement {
    of = List.copyOf(of);
  }
}
