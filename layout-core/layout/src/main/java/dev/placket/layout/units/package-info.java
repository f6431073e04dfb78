/**
 * Lengths and rectangles on the sheet; every length names its unit.
 *
 * <p>The unit is in the name of the factory, as in {@code Length.mm(8)}, so that no bare number can
 * be taken for another unit.
 */
@NullMarked
package dev.placket.layout.units;

import org.jspecify.annotations.NullMarked;
