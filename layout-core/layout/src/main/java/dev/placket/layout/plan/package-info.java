/** Placing flats on sheets, with every fit checked by the referee before it is returned. */
@NullMarked
package dev.placket.layout.plan;

import org.jspecify.annotations.NullMarked;
