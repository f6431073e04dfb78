/**
 * Callouts beside a view: which label of a column takes which place, and how its leader runs.
 *
 * <p>Labels stand in a column, one above the other, at even distances or, where those leave no way,
 * as near to their spots as they can; the order is sought for which the leaders are shortest and
 * none crosses another ({@code ColumnLayout}). The total length is first worked out over all sets
 * of labels that can stand above a place, without regard to crossings ({@code StackLengths},
 * dynamic programming in the manner of boundary labelling: Bekos, Kaufmann, Symvonis and Wolff
 * 2007). It bounds the search for an order without crossings ({@code StackOrder}), which is
 * therefore exact for up to {@link dev.placket.layout.callout.ColumnLayout#EXACT} labels.
 */
@NullMarked
package dev.placket.layout.callout;

import org.jspecify.annotations.NullMarked;
