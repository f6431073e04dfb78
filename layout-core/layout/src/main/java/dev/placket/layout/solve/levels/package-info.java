/**
 * Levels: once scale and order are settled, the views are enlarged together as far as any
 * arrangement allows, then the details, then the swatches.
 *
 * <p>{@code RaiseLevels} asks the search for the largest common factor of the flats of one kind,
 * while all others keep at least the size that they have. The search is the one for the common
 * scale, on a model whose t is that factor. It runs over all arrangements that keep the plan of the
 * order, so the relative order of flats may change. Each level has a bound of its own, conditional
 * on the levels before. Growth within the relative order ({@code solve.finish}) follows and fills
 * what is left, flat by flat.
 */
@NullMarked
package dev.placket.layout.solve.levels;

import org.jspecify.annotations.NullMarked;
