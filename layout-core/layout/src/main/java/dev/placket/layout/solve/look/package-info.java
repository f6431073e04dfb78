/**
 * How a fit looks, in numbers.
 *
 * <p>{@code Look} computes the thirteen measures of Ngo, Teo and Byrne (2003), formulas from
 * memory. {@code Fitter} chooses between the plain result and those with near edges by them. They
 * do not choose between ways to line up details, where they prefer a loose grid to one clean
 * column. The benchmark {@code order} prints them; {@code benchmarks/RESULTS.md} has the figures.
 */
@NullMarked
package dev.placket.layout.solve.look;

import org.jspecify.annotations.NullMarked;
