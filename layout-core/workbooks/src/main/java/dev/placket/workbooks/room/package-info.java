/**
 * The blank room of a worksheet's printed pages, as sheets that the solver knows.
 *
 * <p><b>Flats are solved on the narrowest columns and rows.</b> Let N be the grid with every
 * visible track narrower by the tolerance in pixels. A picture tied to a column by a one-cell
 * anchor moves with it, and the distance of two grid lines in any tolerated grid is at least that
 * in N. What is apart in N is therefore apart in all of them, wider ones included.
 *
 * <p>Pictures of the workbook count as whole cells ({@code Occupied}), so that a wider column
 * cannot move them under a flat. One that is tied to no cell counts from its start in the widest
 * grid to its end in N.
 *
 * <p>A page that would take more than 2e9 steps to search counts as full. A window that a flat
 * names may become several rectangles of blank cells, all of which the flat may use.
 */
@NullMarked
package dev.placket.workbooks.room;

import org.jspecify.annotations.NullMarked;
