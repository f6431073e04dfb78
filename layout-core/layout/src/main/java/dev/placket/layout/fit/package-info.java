/** Placing flats on a sheet: the request, the search, the fit with its proof, or the conflict. */
@NullMarked
package dev.placket.layout.fit;

import org.jspecify.annotations.NullMarked;
