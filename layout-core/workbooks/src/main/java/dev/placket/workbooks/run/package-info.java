/** Flats from a folder or a description onto the worksheets of a workbook. */
@NullMarked
package dev.placket.workbooks.run;

import org.jspecify.annotations.NullMarked;
