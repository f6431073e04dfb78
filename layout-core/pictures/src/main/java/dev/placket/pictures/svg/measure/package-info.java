/**
 * Measures of a drawing, from its geometry: the steps of drawing it, its dashes, its ink, its
 * finest parts.
 *
 * <ul>
 *   <li><b>Drawing is counted in steps before anything is drawn</b> ({@code DrawingWork}, limit
 *       {@code steps}): segments, crossings of scan lines, area, pairs of segments that may cross
 *       in a clip, pixels of masks. Time and memory of the renderers grow with them, and no clock
 *       is read. Masks have at most 3,000 pixels along the view's longest side ({@code
 *       MaskedNode}): Batik would choose as many as the page's finest unit has, which took a minute
 *       for one mask.
 * </ul>
 */
@NullMarked
package dev.placket.pictures.svg.measure;

import org.jspecify.annotations.NullMarked;
