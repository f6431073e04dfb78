package dev.placket.packs.description;

import dev.placket.layout.units.Length;
import java.util.List;

/**
 * An area that flats may use.
 *
 * @param corners small labelled cells in its corners
 */
public record PackWindow(List<Corner> corners) {
  /** A window without corners. */
  public static final PackWindow OPEN = new PackWindow(List.of());

  /** Copies the list. */
  public PackWindow {
    corners = List.copyOf(corners);
  }

  /** Where in a window. */
  public enum At {
    /** The upper left. */
    TOP_LEFT,
    /** The upper right. */
    TOP_RIGHT,
    /** The lower left. */
    BOTTOM_LEFT,
    /** The lower right. */
    BOTTOM_RIGHT
  }

  /**
   * A labelled cell in a corner of a window.
   *
   * @param at which corner
   * @param width how wide
   * @param height how high
   * @param cell what it holds
   */
  public record Corner(At at, Length width, Length height, PackCell cell) {}
}
