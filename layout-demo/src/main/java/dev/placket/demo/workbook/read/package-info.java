/** What a workbook says: its worksheets with their cells, rules, drawn things and print setup. */
@NullMarked
package dev.placket.demo.workbook.read;

import org.jspecify.annotations.NullMarked;
