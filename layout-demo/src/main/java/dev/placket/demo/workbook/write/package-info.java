/** Writes a copy of a workbook that differs in its pictures alone. */
@NullMarked
package dev.placket.demo.workbook.write;

import org.jspecify.annotations.NullMarked;
