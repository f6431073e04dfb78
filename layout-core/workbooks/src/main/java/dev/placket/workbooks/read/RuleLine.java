package dev.placket.workbooks.read;

/**
 * A drawn rule along a line of the grid.
 *
 * @param level whether it runs from left to right; else from top to bottom
 * @param line the row below it, or the column to its right
 * @param from the first column or row along it
 * @param end the column or row after the last
 * @param pixels its width
 */
public record RuleLine(boolean level, int line, int from, int end, double pixels) {}
