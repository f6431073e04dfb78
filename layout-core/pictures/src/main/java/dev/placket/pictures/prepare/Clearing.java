package dev.placket.pictures.prepare;

/**
 * How much of an opaque ground becomes transparent; a white one, unless any colour is asked for.
 */
public enum Clearing {
  /** Nothing: the picture keeps its ground, as a photograph does. */
  NONE,
  /**
   * What is connected to the border; paper that a closed outline encloses stays, so that a white
   * garment stays filled.
   */
  FROM_BORDER,
  /** Enclosed paper as well. */
  ENCLOSED_TOO,
  /** What is connected to the border, whatever its colour, if nearly all of the border has it. */
  ANY_COLOUR
}
