/**
 * From the bytes of an SVG to a document that is safe to build: checked while it is parsed,
 * weighed, sized, its references repaired.
 *
 * <ul>
 *   <li><b>References that Batik cannot accept are replaced first</b>: those to missing parts, each
 *       with a note, and filters, which are not drawn ({@code References}).
 *   <li><b>Memory is estimated from the text</b> ({@code DrawingMemory}, limit {@code memory}),
 *       each use counted, so a path of ten million segments is refused before Batik builds it. The
 *       figures are the smallest heaps in which drawings of one kind were read, hence above the
 *       need.
 *   <li><b>The stated size shows what SVG says</b>: {@code preserveAspectRatio} of the root moves,
 *       crops or stretches the view ({@code SvgSize}). A size within half a per cent of the
 *       proportions of the viewBox counts as rounding and shows the viewBox alone.
 * </ul>
 */
@NullMarked
package dev.placket.pictures.svg.parse;

import org.jspecify.annotations.NullMarked;
