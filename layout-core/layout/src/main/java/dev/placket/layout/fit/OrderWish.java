package dev.placket.layout.fit;

/** What makes an arrangement look ordered; earlier ones matter more. */
public enum OrderWish {
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
