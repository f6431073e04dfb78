/**
 * The contents of a workbook: its worksheets with their cells, rules, drawings and print setup.
 *
 * <p><b>A faulty value costs a note, not the workbook</b>: a range without cells, columns or rows
 * out of order, paper or margins out of range. Where a size is stated twice, the smaller counts.
 * The position of a cell must be right.
 *
 * <p>Text that runs out of its cell is estimated generously ({@code RunningText}).
 */
@NullMarked
package dev.placket.workbooks.read;

import org.jspecify.annotations.NullMarked;
