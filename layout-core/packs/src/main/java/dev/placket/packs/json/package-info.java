/** {@code fit.json}: the numbers of a run for other programs. */
@NullMarked
package dev.placket.packs.json;

import org.jspecify.annotations.NullMarked;
