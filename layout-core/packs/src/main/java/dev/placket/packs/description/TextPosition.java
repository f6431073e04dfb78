package dev.placket.packs.description;

/**
 * A place in a description.
 *
 * @param line from 1
 * @param column from 1
 */
public record TextPosition(int line, int column) {
  /** Where a file begins. */
  public static final TextPosition START = new TextPosition(1, 1);
}
