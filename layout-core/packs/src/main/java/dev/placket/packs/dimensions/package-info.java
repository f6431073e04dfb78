/**
 * Lines of points of measure on a flat, drawn once the flat has its place.
 *
 * <p>A line runs between two spots of the drawing, straight, level or upright, or beside them with
 * extension lines. Ends are closed arrowheads (ISO 129-1). The code stands in a gap of its line, or
 * beside a short one, at printed size, where no other line of a measure meets it ({@code
 * DimensionLayout}). The lines lie within the ink of their flat, so that the fit is the same with
 * and without them.
 */
@NullMarked
package dev.placket.packs.dimensions;

import org.jspecify.annotations.NullMarked;
