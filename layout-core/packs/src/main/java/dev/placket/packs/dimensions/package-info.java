/**
 * Lines of points of measure on a flat, and their codes.
 *
 * <p>A line runs between two spots of the drawing, straight, level or upright, or along a line of
 * the drawing. Ends are closed arrowheads (ISO 129-1). It lies on the drawing, beside its spots
 * where that is stated, or in a lane outside of the ink: level lines above and below, upright ones
 * left and right, unless labels stand there. {@code DimensionLayout} defines which place is best.
 *
 * <p>Lanes have a fixed printed width, so that a flat with lanes has a footprint of its own. {@code
 * DimensionPlan} finds the lanes that the measures need at sizes from 30 to 400 mm and offers them
 * as footprints, each with the size from which on it does; the fit chooses, and its bound counts
 * all. If at the fitted size lines still meet or codes cover the drawing, the fit is repeated with
 * more lanes.
 */
@NullMarked
package dev.placket.packs.dimensions;

import org.jspecify.annotations.NullMarked;
