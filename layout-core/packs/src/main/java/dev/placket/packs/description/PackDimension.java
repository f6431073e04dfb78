package dev.placket.packs.description;

/**
 * The line of a point of measure on a flat.
 *
 * @param from a point of the flat, or an element of its drawing
 * @param to another
 * @param run which way it runs between them
 * @param beside how far beside them it lies, in the drawing's own units
 */
public record PackDimension(String from, String to, Run run, double beside) {
  /** Which way a line runs. */
  public enum Run {
    /** The shortest way. */
    STRAIGHT,
    /** Across the sheet, at the height of the first spot. */
    LEVEL,
    /** Down the sheet, below the first spot. */
    UPRIGHT
  }
}
