/** The contents of a workbook: its worksheets with their cells, rules, drawings and print setup. */
@NullMarked
package dev.placket.workbooks.read;

import org.jspecify.annotations.NullMarked;
