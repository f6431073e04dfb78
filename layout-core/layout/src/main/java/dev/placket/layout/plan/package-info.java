/**
 * Placing flats on sheets, with every fit checked by the referee before it is returned.
 *
 * <p>This is the entry point for programs. The referee stays usable by itself; the solver ({@code
 * solve}) is not exported, so no program receives a fit that is not checked.
 */
@NullMarked
package dev.placket.layout.plan;

import org.jspecify.annotations.NullMarked;
