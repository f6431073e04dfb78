/**
 * From an arrangement in doubles to placements in decimals: spread, balanced, rounded, grown.
 *
 * <p><b>Rounding.</b> {@code SpreadOut} widens the smallest space, then the next. Positions are
 * rounded to 1e-9 pt and checked in decimals ({@code CheckExactly}). The scale is reduced by some
 * 2e-11 of itself until the check passes.
 *
 * <p><b>Exactness.</b> The search uses doubles. Its results are decimals: positions to 1e-9 pt,
 * scales to twelve significant digits, rounded down, ratios as entered. The referee recomputes each
 * rule from these without tolerance. Nine decimals, not six, keep the answer independent of the
 * unit of the sheet. Maximum sizes are divided in decimals ({@code RoundScales}): as a double, a
 * scale can exceed the size that it comes from by a rounding error. A flat as long as the front
 * shrinks with it.
 *
 * <p><b>Balance</b> is free: after spreading, the flats of a room move as one towards the middle by
 * the area of their drawings. The space at the outside never falls below the smallest space.
 * Balance is reached if the centre is within 5 % of the room's width and height. A large view
 * beside a smaller one with even spaces often is not balanced, and evenness looks better.
 *
 * <p><b>Growth.</b> {@code GrowOn} starts from the rounded arrangement, after the levels, and keeps
 * its relative order and its ties. Every class has a factor, from 1 upwards. For one order the
 * sizes that fit form a convex set that contains all smaller sizes. Filling it round by round is
 * therefore the lexicographic max-min: all classes rise by one factor ({@code StretchOrder} on a
 * model whose t is that factor), classes that cannot rise by 1e-9 alone stop, the rest rises
 * further. A class kept below another by the rules for the front counts as free while the other can
 * rise with it. {@code provenForOrder} states that every class was blocked or at its maximum, and
 * that the rounding passed. The common scale of the proof is the one before growth.
 */
@NullMarked
package dev.placket.layout.solve.finish;

import org.jspecify.annotations.NullMarked;
