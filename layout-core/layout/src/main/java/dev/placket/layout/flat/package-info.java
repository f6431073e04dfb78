/**
 * Flats to be placed: role, drawing bounds, limits, windows, scale group and fixed positions.
 *
 * <p><b>Ratios are scale over the common scale of the group</b>, as people state them ("the back at
 * 0.85"). For views beside the front the role's default is 0.85, also in a scale group, and a
 * caption states it on the sheet.
 *
 * <p><b>What does not scale is stated apart</b> ({@code Surround}): captions keep their size when
 * the drawing grows, so a footprint is not proportional to the scale. A flat may offer several
 * footprints ({@code FlatShape}), of which a fit takes one.
 */
@NullMarked
package dev.placket.layout.flat;

import org.jspecify.annotations.NullMarked;
