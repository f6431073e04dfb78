/**
 * Callouts beside a flat: their texts set, the footprints that they ask for, and their leaders laid
 * once the flat has its place.
 *
 * <p>Before the fit, {@code CalloutPlan} offers footprints: labels right of the ink, left of it, or
 * on both sides, each with a lane for leaders, for lines of two lengths. Lanes are narrow first;
 * where the leaders of the fit cannot be drawn in them, wide ones are tried. The solver takes the
 * one with which the sheet's scale is largest. After the fit, {@code CalloutLayout} orders the
 * labels of each column and draws the leaders. Sizes of lettering, lines and dots are printed
 * sizes, whatever the scale.
 */
@NullMarked
package dev.placket.packs.callouts;

import org.jspecify.annotations.NullMarked;
