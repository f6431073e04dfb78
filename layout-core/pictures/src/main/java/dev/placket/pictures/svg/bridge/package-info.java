/**
 * Bridges that replace those of Batik where its own do not follow the standard ({@code
 * RightContext}).
 *
 * <p>A bridge is for what needs the built shape, such as its box: clips, markers, masks, patterns,
 * lines. All else is rewritten before ({@code svg.rewrite}), since the plain form also reaches
 * measuring, notes and the PDF.
 *
 * <p>Markers are placed here ({@code Vertices}, SVG 2, 9.5.1): segments without a length are
 * skipped, and both ends of a closed subpath turn half-way between its last and its first segment.
 */
@NullMarked
package dev.placket.pictures.svg.bridge;

import org.jspecify.annotations.NullMarked;
