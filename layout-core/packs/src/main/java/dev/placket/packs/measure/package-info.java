/**
 * Points of measure and their graded values.
 *
 * <p>A list has sizes in one group or several, a sample size, and points. A point has a value at
 * the sample size and steps outward from it, or typed values. Values are exact: lengths are
 * decimals in millimetres, and an inch is exactly 25.4 of them, so that a fraction of an inch with
 * a power of two below the line is a decimal, too. They are rounded once, when they are shown
 * ({@code Rounding}): halves away from zero, tolerances towards zero, so that no conversion widens
 * one.
 *
 * <p>Words are those of ISO 18890:2018 as far as its published scope has them (a garment laid flat,
 * measured between points of measure, to which the parties may add others); its clauses were not at
 * hand, and half, full, flat and stretched are common practice.
 *
 * <p>Measures of a garment come from this list, never from a drawing.
 */
@NullMarked
package dev.placket.packs.measure;

import org.jspecify.annotations.NullMarked;
