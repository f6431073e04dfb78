/**
 * Order: some of the largest scale given up for a tidy look.
 *
 * <p>{@code LineUp} takes the wishes one after the other, each as a few candidate plans: equalities
 * between anchors, and options removed from pairs ({@code PlanLines}). The search that proves the
 * largest scale also finds the largest scale of each plan, above the floor that the share sets. An
 * equality thus costs what it must and no more. The price of a step is its loss of scale over the
 * largest known scale.
 *
 * <ul>
 *   <li>A line between views and other flats ({@code OrderStart}): one search with the line
 *       upright, one with it level, its place free in both. The wishes below start from each line
 *       that the share pays for, and {@code CompareFits} takes the better fit. The bound is that of
 *       the sheet without a line.
 *   <li>Reading: a flat stands left of or above the later ones of its role, and no later one lies
 *       wholly above it. The second half is a distance between anchors that does not depend on the
 *       scale ({@code Plan.Reads}), slightly narrower than the rule. Where the search finds no such
 *       arrangement, rows of details are tried before columns. Kept or not is measured on the
 *       finished placements ({@code ReadingOrder}).
 *   <li>Views: one row, else two, level at the heights that they name. Rows are level at the bottom
 *       of the drawings; captions hang below, so their baselines align.
 *   <li>Details ({@code DetailBlock}): one row, full grids, one column. Short last rows, and rows
 *       and columns of unequal length, are used only where they gain 4 % of scale. Candidates are
 *       compared by the sizes that views, and then details, reach in their order ({@code
 *       GrowthRoom}): a row and a column may have one scale and very different room. Details stand
 *       right of all views or below them; where neither is possible, after each view in one
 *       direction or the other, then anywhere.
 *   <li>Few edges ({@code SharedEdges}): columns of a grid centred, else flush left, else the rows
 *       flush left. A line that the last details share with the views is dropped where it would
 *       pull the views off the middle of the window by more than 2 % of its sides.
 *   <li>What stands in no line comes after the views where the share pays for that. {@code
 *       NearEdges} then ties edges that nearly agree, pair by pair within the same windows, in the
 *       relative order found: bottoms beside one another, left edges or middles above one another.
 *       One line costs at most 3 % of the scale, within the share. Its price counts as that of few
 *       edges, which are reached once one line is.
 * </ul>
 */
@NullMarked
package dev.placket.layout.solve.order;

import org.jspecify.annotations.NullMarked;
