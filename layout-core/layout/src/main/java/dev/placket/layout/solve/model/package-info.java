/**
 * A request read into arrays, what an arrangement of its flats is, and the room that each flat may
 * use.
 *
 * <p>A scale group, or a flat without one, is a class. {@code Scales} gives its scale as a function
 * of t that never falls: the target, clamped by limits. The rules for front and details allow some
 * ranges of t, mostly one. Each range is a {@code Model}; the highest is tried first. {@code
 * FindSpace} turns windows, labelled cells and rules into walls and into maximal empty rectangles.
 * Windows join where they share a grid line, not where two doubles are equal.
 *
 * <p>A {@code Plan} states what an arrangement has to keep besides: equalities between anchors, and
 * the options that each pair still has. {@code Shapes} gives the reach of each footprint at t.
 *
 * <p><b>Rules with a choice.</b> A front at its maximum size ends the common scale where another
 * flat would outgrow it: a size is its target clamped by its own limits, so a rule allows or
 * forbids t and never shrinks a flat. A detail is smaller than each view by at least 0.001 pt,
 * because "smaller" has no largest value, and a thousandth of a point is the precision promised for
 * the written file.
 *
 * <p><b>Captions.</b> One footprint does not only grow with t: a fixed left edge under a caption
 * wider than the drawing. {@code HeldUnderCaption} splits the range of t there. In the lower part a
 * placement found is valid, and the bound stays at the end of that part.
 */
@NullMarked
package dev.placket.layout.solve.model;

import org.jspecify.annotations.NullMarked;
