/**
 * The search for the largest common scale, with its proof. {@code ProveScale} runs the three steps.
 *
 * <ol>
 *   <li><b>Bound.</b> {@code BoundScale}: each flat fits into one of its maximal empty rectangles.
 *       All footprints, enlarged by the smallest gap, fit into the area of the room enlarged by the
 *       same; the same applies to flats that share a window. {@code BoundByLargest} solves the
 *       largest flats alone: their scale bounds that of all.
 *   <li><b>First arrangements.</b> {@code PlaceGreedily}: five orders from four corners, by rows
 *       and by columns. Each climbs while it improves on the best.
 *   <li><b>Search.</b> {@code SearchOrders} looks for an arrangement above the best by 4e-7. A node
 *       first propagates ({@code TightenBounds}). If nothing collides at the earliest anchors, the
 *       node is an arrangement: it is stretched, and the threshold rises in the same tree.
 *       Otherwise a colliding pair takes one of its options; once the tree of that option is empty,
 *       the option is refused. Restarts keep the weights. Between restarts {@code LookAround} frees
 *       a few flats of the best arrangement and searches that smaller tree.
 * </ol>
 *
 * <p><b>Completeness.</b> The four options of a pair cover every arrangement; a flat and a wall
 * have the same four. Shrinking about the anchors turns an arrangement at some t into one at any
 * smaller t. A tree that is empty at a threshold therefore stays empty above it. A <i>refused</i>
 * option states that no arrangement uses it, and only then anything is known of how near the two
 * stand. An option that is merely <i>not taken</i> states nothing, since two options may be true at
 * once. Confusing the two once produced false proofs.
 *
 * <p><b>Soundness of the bound.</b> The bound comes from relaxations or from empty trees, never
 * from a run that its steps ended.
 */
@NullMarked
package dev.placket.layout.solve.search;

import org.jspecify.annotations.NullMarked;
