/**
 * Flats placed on a worksheet: solved on paper, anchored in whole EMU, prepared as pictures.
 *
 * <p><b>Extents</b> ({@code Prepare}). A drawing is rendered with a whole number of EMU per pixel.
 * Its extents relate exactly as its pixels do, and the scale of a group is exact; the rest of the
 * last pixel is room round the drawing that does not scale. A raster takes the largest multiple of
 * its proportions in pixels that its place allows, which in a group costs at most one part in some
 * thousands.
 *
 * <p>At most 400 printed pages of a worksheet are tried ({@code Pages}).
 */
@NullMarked
package dev.placket.workbooks.place;

import org.jspecify.annotations.NullMarked;
