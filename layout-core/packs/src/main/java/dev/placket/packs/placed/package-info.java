/** Flats with their place on a sheet, and what follows from it: pixels, density, file size. */
@NullMarked
package dev.placket.packs.placed;

import org.jspecify.annotations.NullMarked;
