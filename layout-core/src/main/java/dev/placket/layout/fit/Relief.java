package dev.placket.layout.fit;

/**
 * The smallest change of one kind that would cure a conflict.
 *
 * @param kind what would change
 * @param of the flat, track, margin or cell that would change
 * @param amount how much, in {@code unit}; not negative
 * @param unit the unit of the amount
 */
public record Relief(Kind kind, String of, double amount, Unit unit) {
  /** What a relief changes. */
  public enum Kind {
    /** A flat's least size is lowered by the amount. */
    LOWER_LEAST_SIZE,
    /** A labelled cell is shortened by the amount. */
    SHORTEN_CELL,
    /** A margin is narrowed by the amount. */
    NARROW_MARGIN,
    /** A column or row grows by the amount. */
    WIDEN_TRACK,
    /** The gap is lowered by the amount. */
    LOWER_GAP,
    /** The clearance is lowered by the amount. */
    LOWER_CLEARANCE,
    /** A ratio changes by the amount. */
    CHANGE_RATIO,
    /** A flat is left out. */
    LEAVE_OUT
  }

  /** The units of an amount. */
  public enum Unit {
    /** Points of 1/72 inch. */
    POINT,
    /** A plain ratio. */
    RATIO,
    /** A number of flats. */
    FLAT
  }
}
