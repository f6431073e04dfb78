/** Flats placed on a worksheet: solved on paper, anchored in whole EMU, prepared as pictures. */
@NullMarked
package dev.placket.workbooks.place;

import org.jspecify.annotations.NullMarked;
