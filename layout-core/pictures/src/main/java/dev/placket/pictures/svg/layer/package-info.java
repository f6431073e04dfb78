/**
 * Layers: what a drawing puts together first and only then lays over what is under it.
 *
 * <ul>
 *   <li><b>Overlaps under one opacity, blend modes and masks are layers</b> ({@code LayerPlan},
 *       {@code NodePainter}; Batik's own painting is not used): pixels in renderings ({@code
 *       PixelLayers}), a transparency group with its paths in the PDF. What does not overlap is
 *       folded into its paints, so most pages need no group. Colours worked out by hand test both.
 * </ul>
 */
@NullMarked
package dev.placket.pictures.svg.layer;

import org.jspecify.annotations.NullMarked;
