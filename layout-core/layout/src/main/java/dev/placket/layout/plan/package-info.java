/**
 * Placing flats on sheets, with every fit checked by the referee before it is returned.
 *
 * <p>This is the entry point for programs. The solver and the referee stay usable by themselves,
 * but only a fit from here is known to be checked.
 */
@NullMarked
package dev.placket.layout.plan;

import org.jspecify.annotations.NullMarked;
