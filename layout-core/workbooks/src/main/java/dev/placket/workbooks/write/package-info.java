/** Writes a copy of a workbook that differs in its pictures alone. */
@NullMarked
package dev.placket.workbooks.write;

import org.jspecify.annotations.NullMarked;
