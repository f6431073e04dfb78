/**
 * Tables on a sheet: their values from a file, their columns, rows and pieces.
 *
 * <p>The strong column of a table (the sample size) is set in thickened strokes of the same
 * typeface: the typeface of PDFBox has no bold, and widths stay as measured.
 */
@NullMarked
package dev.placket.packs.table;

import org.jspecify.annotations.NullMarked;
