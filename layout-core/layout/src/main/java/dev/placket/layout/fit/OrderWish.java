package dev.placket.layout.fit;

/** What makes an arrangement look ordered; earlier ones matter more. */
public enum OrderWish {
  /**
   * A straight line, upright or level, parts the views from the other flats of their windows: all
   * views lie left of it or above it. Both clearances and the width of a drawn line fit between.
   */
  PARTED,
  /** Flats of one role, views aside, are read in the order given; see {@link ReadingOrder}. */
  IN_ORDER,
  /** Views stand level on their named height. */
  LEVEL_VIEWS,
  /** Details stand in rows or columns, in the order given. */
  DETAILS_IN_LINE,
  /**
   * Few different edges and spaces, among lines of details or among flats that stand in no line.
   */
  FEW_EDGES,
  /** The ink is balanced about the middle of its window. */
  BALANCE
}
