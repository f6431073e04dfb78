/** An independent referee that recomputes every promise of a fit in exact arithmetic. */
@NullMarked
package dev.placket.layout.check;

import org.jspecify.annotations.NullMarked;
