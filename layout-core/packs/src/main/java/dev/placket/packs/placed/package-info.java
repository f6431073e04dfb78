/**
 * Flats with their place on a sheet, and what follows from it: pixels, density, file size.
 *
 * <p><b>A size limit is met by measuring</b> ({@code KeepWeight}): the bytes of the PDF beside its
 * pictures are measured, not guessed. If the file is still too large, smaller pictures are
 * requested by that much, at most three times. The size of a flat is what the file loses without
 * it.
 *
 * <p>Pale cloth and photographs get a hairline where their edge would not show ({@code
 * SwatchFrame}), and so do details whose cut lines stand close to one another ({@code CropFrame}).
 */
@NullMarked
package dev.placket.packs.placed;

import org.jspecify.annotations.NullMarked;
