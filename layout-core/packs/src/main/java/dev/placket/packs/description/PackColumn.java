package dev.placket.packs.description;

import dev.placket.layout.sheet.GridTrack;
import org.jspecify.annotations.Nullable;

/**
 * A column of a table.
 *
 * @param heading what stands above it
 * @param width its width; null for as wide as its values, or a share where they are long
 * @param align how values stand; null for by the decimal mark where all are numbers, else left
 * @param windows whether its values name flats, each with a window in its row
 * @param marks whether its values are the marks of callouts of its sheet, each in a ring there
 */
public record PackColumn(
    Words heading,
    @Nullable GridTrack width,
    @Nullable Align align,
    boolean windows,
    boolean marks) {
  /** How the values of a column stand. */
  public enum Align {
    /** Lines begin at the left. */
    LEFT,
    /** Lines stand in the middle. */
    CENTRE,
    /** Lines end at the right. */
    RIGHT,
    /** Decimal marks stand under one another. */
    DECIMAL
  }

  /** A column that finds its own width and alignment. */
  public static PackColumn of(String heading) {
    return new PackColumn(Words.of(heading), null, null, false, false);
  }
}
