/**
 * The background of a raster and the box of its ink, found from rows in one pass where the first
 * rows tell the background right.
 *
 * <ul>
 *   <li><b>Pale pictures are not blank</b> ({@code InkFinder.pale}): where nothing stands out from
 *       a pale background, the whole picture counts, unless every pixel is pure white or
 *       transparent. A swatch may be pure white ({@code PictureReader.readSwatch}).
 *   <li><b>A frame line counts as ink.</b> It is reported with the bounds inside it, and nothing is
 *       cut.
 * </ul>
 */
@NullMarked
package dev.placket.pictures.ink;

import org.jspecify.annotations.NullMarked;
