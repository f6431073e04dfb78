/**
 * Placing flats on a sheet: the request, the search, the fit with its proof, or the conflict.
 *
 * <p>{@code Fitter} reads the request ({@code ReadRequest} makes {@code Model}s), proves the
 * largest common scale t ({@code ProveScale}), trades some of it for order where asked ({@code
 * LineUp}), rounds ({@code FinishExactly}) and lets flats grow ({@code GrowOn}). A request that has
 * no arrangement goes to {@code ExplainConflict}.
 *
 * <h2>Contract</h2>
 *
 * <ul>
 *   <li>Requests and fits are values without functions, so any engine can carry them. "It does not
 *       fit" is a value ({@code Conflict}); only programming errors throw. Cancelling is the one
 *       function, an argument of {@code Fitter.fit}.
 *   <li>The common scale is the scale of the leading flat in points per drawing unit: of the front,
 *       else of the first view, else of the first flat. It is a number on paper, so two packs can
 *       be compared.
 *   <li>Budgets count steps. The result depends on the request alone: ties are broken by index, and
 *       neither hash order nor a clock takes part.
 * </ul>
 *
 * <h2>Search</h2>
 *
 * <ol>
 *   <li><b>Read.</b> A scale group, or a flat without one, is a class. {@code Scales} gives its
 *       scale as a function of t that never falls: the target, clamped by limits. The rules for
 *       front and details allow some ranges of t, mostly one. Each range is a {@code Model}; the
 *       highest is tried first. {@code FindSpace} turns windows, labelled cells and rules into
 *       walls and into maximal empty rectangles. Windows join where they share a grid line, not
 *       where two doubles are equal.
 *   <li><b>Bound.</b> {@code BoundScale}: each flat fits into one of its maximal empty rectangles.
 *       All footprints, enlarged by the smallest gap, fit into the area of the room enlarged by the
 *       same; the same applies to flats that share a window. {@code BoundByLargest} solves the
 *       largest flats alone: their scale bounds that of all.
 *   <li><b>First arrangements.</b> {@code PlaceGreedily}: five orders from four corners, by rows
 *       and by columns. Each climbs while it improves on the best.
 *   <li><b>Stretch.</b> {@code StretchOrder}: for one relative order the constraints on x and y are
 *       longest paths ({@code Chain}) whose lengths are piecewise linear in t. Newton steps on the
 *       tightest path find the largest t; bisection takes over where a maximum size bends the path.
 *   <li><b>Search.</b> {@code SearchOrders} looks for an arrangement above the best by 4e-7. A node
 *       first propagates ({@code TightenBounds}). If nothing collides at the earliest anchors, the
 *       node is an arrangement: it is stretched, and the threshold rises in the same tree.
 *       Otherwise a colliding pair takes one of its options; once the tree of that option is empty,
 *       the option is refused. Restarts keep the weights. Between restarts {@code LookAround} frees
 *       a few flats of the best arrangement and searches that smaller tree.
 *   <li><b>Finish.</b> {@code SpreadOut} widens the smallest space, then the next. Positions are
 *       rounded to 1e-9 pt and checked in decimals ({@code CheckExactly}). The scale is reduced by
 *       some 2e-11 of itself until the check passes.
 * </ol>
 *
 * <p><b>Completeness.</b> The four options of a pair cover every arrangement; a flat and a wall
 * have the same four. Shrinking about the anchors turns an arrangement at some t into one at any
 * smaller t. A tree that is empty at a threshold therefore stays empty above it. A <i>refused</i>
 * option states that no arrangement uses it, and only then anything is known of how near the two
 * stand. An option that is merely <i>not taken</i> states nothing, since two options may be true at
 * once. Confusing the two once produced false proofs.
 *
 * <p><b>Soundness of the bound.</b> The bound comes from relaxations (step 2) or from empty trees
 * (step 5), never from a run that its steps ended. One footprint does not only grow with t: a fixed
 * left edge under a caption wider than the drawing. {@code HeldUnderCaption} splits the range of t
 * there. In the lower part a placement found is valid, and the bound stays at the end of that part.
 *
 * <p><b>Exactness.</b> The search uses doubles. Its results are decimals: positions to 1e-9 pt,
 * scales to twelve significant digits, rounded down, ratios as entered. The referee recomputes each
 * rule from these without tolerance. Nine decimals, not six, keep the answer independent of the
 * unit of the sheet. Maximum sizes are divided in decimals ({@code RoundScales}): as a double, a
 * scale can exceed the size that it comes from by a rounding error. A flat as long as the front
 * shrinks with it.
 *
 * <p><b>Rules with a choice.</b> A front at its maximum size ends the common scale where another
 * flat would outgrow it: a size is its target clamped by its own limits, so a rule allows or
 * forbids t and never shrinks a flat. A detail is smaller than each view by at least 0.001 pt,
 * because "smaller" has no largest value, and a thousandth of a point is the precision promised for
 * the written file.
 *
 * <h2>Order</h2>
 *
 * <p>{@code LineUp} takes the wishes one after the other, each as a few candidate plans: equalities
 * between anchors, and options removed from pairs ({@code PlanLines}). The search that proves the
 * largest scale also finds the largest scale of each plan, above the floor that the share sets. An
 * equality thus costs what it must and no more. The price of a step is its loss of scale over the
 * largest known scale.
 *
 * <ul>
 *   <li>Views: one row, else two, level at the heights that they name. Rows are level at the bottom
 *       of the drawings; captions hang below, so their baselines align.
 *   <li>Details ({@code DetailBlock}): one row, full grids, one column. Short last rows, and rows
 *       and columns of unequal length, are used only where they gain 4 % of scale, since growth
 *       regains some of what tidiness costs. Details stand right of all views or below them; where
 *       neither is possible, after each view in one direction or the other, then anywhere.
 *   <li>Few edges ({@code SharedEdges}): columns of a grid centred, else flush left, else the rows
 *       flush left. A line that the last details share with the views is dropped where it would
 *       pull the views off the middle of the window by more than 2 % of its sides.
 *   <li>What stands in no line comes after the views where the share pays for that. {@code
 *       NearEdges} then ties edges that nearly agree, pair by pair within the same windows, in the
 *       relative order found: bottoms beside one another, left edges or middles above one another.
 *       One line costs at most 3 % of the scale, within the share. Its price counts as that of few
 *       edges, which are reached once one line is.
 *   <li>Balance is free: after spreading, the flats of a room move as one towards the middle by the
 *       area of their drawings. The space at the outside never falls below the smallest space.
 *       Balance is reached if the centre is within 5 % of the room's width and height. A large view
 *       beside a smaller one with even spaces often is not balanced, and evenness looks better.
 * </ul>
 *
 * <p><b>Measures.</b> {@code Look} computes the thirteen measures of Ngo, Teo and Byrne (2003),
 * formulas from memory. {@code Fitter} chooses between the plain result and those with near edges
 * by them. They do not choose between ways to line up details, where they prefer a loose grid to
 * one clean column. The benchmark {@code order} prints them; {@code benchmarks/RESULTS.md} has the
 * figures.
 *
 * <h2>Growth</h2>
 *
 * <p>{@code GrowOn} starts from the rounded arrangement and keeps its relative order and its ties.
 * Every class has a factor, from 1 upwards. For one order the sizes that fit form a convex set that
 * contains all smaller sizes. Filling it round by round is therefore the lexicographic max-min: all
 * classes rise by one factor ({@code StretchOrder} on a model whose t is that factor), classes that
 * cannot rise by 1e-9 alone stop, the rest rises further. A class kept below another by the rules
 * for the front counts as free while the other can rise with it. {@code provenForOrder} states that
 * every class was blocked or at its maximum, and that the rounding passed. The common scale of the
 * proof is the one before growth.
 *
 * <h2>Conflicts</h2>
 *
 * <p>{@code ExplainConflict} finds the preferred minimal conflict ({@code PreferredConflict}, after
 * Junker 2004) among the {@code Demands}. Then it tries every cure ({@code Cures} for demands,
 * {@code SheetCures} for cells and margins) in the unit of that cure and halves the amount from
 * above. The amount stated therefore always cures, and nine tenths of it does not. {@code
 * ConflictText} writes a paragraph, millimetres rounded up. {@code provenMinimal} is true only if
 * every check behind the conflict was complete. {@code mvn test -Dtest=ConflictTest
 * -Dplacket.conflicts=1000} checks a thousand seeded sheets instead of a hundred.
 *
 * <h2>Further sheets</h2>
 *
 * <p>{@code FurtherSheets}: a sheet still fits after a flat is taken off it. Filling each sheet as
 * far as possible therefore gives the fewest; {@code provenFewest} states that the refusals behind
 * that were proven. The first sheet may be ruled in several ways and further sheets in another.
 * {@code ShareSheets} then moves the breaks so that the smallest common scale is as large as
 * possible. Targets keep their meaning among all flats ({@code FlowTargets}), also where the front
 * is on another sheet. A scale group on several sheets has one scale: that of the tightest sheet,
 * or the one at which a flat of the group is fixed.
 */
@NullMarked
package dev.placket.layout.fit;

import org.jspecify.annotations.NullMarked;
