/**
 * Boxes of shapes, whatever file they come from: true extremes of curves, the part of a shape that
 * a clip shows, and the box of all ink in the order of drawing.
 */
@NullMarked
package dev.placket.pictures.shape;

import org.jspecify.annotations.NullMarked;
