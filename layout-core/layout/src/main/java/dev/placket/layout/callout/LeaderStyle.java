package dev.placket.layout.callout;

/** How leaders run from a spot to their label; one style for a sheet. */
public enum LeaderStyle {
  /** One straight line. */
  STRAIGHT,
  /** From the spot at 30, 45 or 60 degrees, then level to the label; one angle for a column. */
  INCLINED
}
