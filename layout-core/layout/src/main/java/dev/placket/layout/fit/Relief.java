package dev.placket.layout.fit;

import org.jspecify.annotations.Nullable;

/**
 * The smallest change of one kind that would cure a conflict.
 *
 * @param kind what would change
 * @param of the flat, track, margin, cell or rule that would change
 * @param edge which edge of the cell moves inwards, or which margin it is; null for all else
 * @param amount how much, in {@code unit}; above zero: it cures, and nine tenths of it does not
 * @param unit the unit of the amount
 */
public record Relief(Kind kind, String of, @Nullable Edge edge, double amount, Unit unit) {
  /** What a relief changes. */
  public enum Kind {
    /** A flat's least size is lowered by the amount. */
    LOWER_LEAST_SIZE,
    /** A labelled cell gives way by the amount. */
    SHORTEN_CELL,
    /** A margin is narrowed by the amount. */
    NARROW_MARGIN,
    /** All gaps are lowered by the amount. */
    LOWER_GAP,
    /** All clearances are lowered by the amount. */
    LOWER_CLEARANCE,
    /** A flat's ratio in its scale group is raised by the amount. */
    CHANGE_RATIO,
    /** A flat is left out. */
    LEAVE_OUT,
    /** What is held of a flat may move. */
    LET_MOVE,
    /** A rule that lets the front lead is turned off. */
    TURN_OFF
  }

  /** An edge of a cell, or of the paper. */
  public enum Edge {
    /** The left edge. */
    LEFT,
    /** The upper edge. */
    TOP,
    /** The right edge. */
    RIGHT,
    /** The lower edge. */
    BOTTOM
  }

  /** The units of an amount. */
  public enum Unit {
    /** Points of 1/72 inch. */
    POINT,
    /** A plain ratio. */
    RATIO,
    /** A number of flats. */
    FLAT,
    /** A thing that is done or not; the amount is 1. */
    CHOICE
  }
}
