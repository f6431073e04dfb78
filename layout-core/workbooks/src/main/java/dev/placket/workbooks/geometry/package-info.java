/** Measures of a worksheet: columns, rows, ranges, paper and printed pages (ISO/IEC 29500-1). */
@NullMarked
package dev.placket.workbooks.geometry;

import org.jspecify.annotations.NullMarked;
