/**
 * One relative order: how each pair of flats stands apart, and how far that order lets them grow,
 * move and come together.
 *
 * <p>{@code StretchOrder}: for one relative order the constraints on x and y are longest paths
 * ({@code Chain}) whose lengths are piecewise linear in t. Newton steps on the tightest path find
 * the largest t; bisection takes over where a maximum size bends the path.
 */
@NullMarked
package dev.placket.layout.solve.stretch;

import org.jspecify.annotations.NullMarked;
