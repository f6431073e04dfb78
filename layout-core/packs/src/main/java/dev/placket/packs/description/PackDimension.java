package dev.placket.packs.description;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The line of a point of measure on a flat.
 *
 * @param from a point of the flat, or an element of its drawing
 * @param to another; empty where it runs to an edge
 * @param run which way it runs between them
 * @param beside how far beside them it lies, in the drawing's own units; null leaves it to the
 *     layout
 * @param edge two points of a straight edge, which it meets at right angles; else empty
 * @param along the element that it runs along; else empty
 */
public record PackDimension(
    String from, String to, Run run, @Nullable Double beside, List<String> edge, String along) {
  /** Copies the list. */
  public PackDimension {
    edge = List.copyOf(edge);
  }

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
