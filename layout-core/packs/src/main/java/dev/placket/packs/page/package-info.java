/**
 * A page of a pack, written as PDF and as a preview picture.
 *
 * <p><b>The preview is drawn from the values of the page</b>, as the PDF is; a test compares it
 * with PDFBox's rendering of the PDF. Reading the PDF back took a tenth of a short run. A preview
 * has at most as many pixels as its caller allows, hence fewer per inch on large paper.
 *
 * <p><b>Drawings are written in hundredths of a point</b>, under a matrix of 0.01. Coordinates keep
 * two more decimals, and readers that take the phase of a dash as a whole number (PDFBox does) show
 * stitching in the right place. It costs some 5 % of bytes.
 *
 * <p><b>No clock enters the file</b> ({@code ContentId}): the same pages give the same bytes. What
 * overlaps under one opacity, blends or is masked is a transparency group ({@code PdfLayers}).
 */
@NullMarked
package dev.placket.packs.page;

import org.jspecify.annotations.NullMarked;
