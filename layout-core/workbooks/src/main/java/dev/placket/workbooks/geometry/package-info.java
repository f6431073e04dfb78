/**
 * Measures of a worksheet: columns, rows, ranges, paper and printed pages (ISO/IEC 29500-1).
 *
 * <p><b>No font of the machine is measured.</b> {@code DigitWidth} lists the digits of common
 * typefaces. A default font that it does not list counts as 7 pixels at 11 points, and the report
 * says so.
 *
 * <p><b>A printed page is what it contains for every reader</b>, from its latest start to its
 * earliest end ({@code PrintPages}), since readers disagree about sizes by a little.
 */
@NullMarked
package dev.placket.workbooks.geometry;

import org.jspecify.annotations.NullMarked;
