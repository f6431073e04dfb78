/**
 * An independent referee that recomputes every promise of a fit in exact arithmetic.
 *
 * <p>It reads the values of requests and fits and calls no code of the solver. A fault of the
 * solver therefore cannot hide itself. Input doubles count as the decimal that they print, and
 * every rule is checked without a tolerance. Where the front lost length by rounding, a flat as
 * long as the front may lose the same.
 */
@NullMarked
package dev.placket.layout.check;

import org.jspecify.annotations.NullMarked;
