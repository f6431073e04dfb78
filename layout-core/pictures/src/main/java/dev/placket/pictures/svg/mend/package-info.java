/**
 * What Batik builds and cannot draw, replaced in the built tree ({@code PaintMending}): gradients
 * and patterns whose numbers overflow or have no inverse, with a mean colour where they are too
 * fine; patterns whose tiles Batik cannot make ({@code SafePattern}); and masks, drawn with a
 * bounded number of pixels ({@code MaskedNode}).
 */
@NullMarked
package dev.placket.pictures.svg.mend;

import org.jspecify.annotations.NullMarked;
