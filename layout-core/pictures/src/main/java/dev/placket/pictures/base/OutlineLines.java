package dev.placket.pictures.base;

import dev.placket.layout.flat.InkedBox;

/**
 * The outline of a drawing, by which all its lines are weighted, in drawing units.
 *
 * @param width of the widest lines that make up at least 15 % of the drawn length
 * @param reach how far strokes go beyond their paths at most, joins and caps at their upper bound
 * @param geometry the box of what is drawn, without the width of lines
 */
public record OutlineLines(double width, double reach, InkedBox geometry) {}
